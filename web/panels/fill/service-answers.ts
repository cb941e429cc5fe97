import type { JobFile } from '../../../geometry/job/job-file.ts';

export type ServiceFile = NonNullable<JobFile['service']>;

/** What is asked about the service; the first question is what is carried along. */
export type ServiceQuestion = 'grains' | 'concentration' | 'shape';

/** The questions that matter for what is carried along, in the order they are asked. */
export function questionsFor(service: ServiceFile | undefined): readonly ServiceQuestion[] {
  if (service?.solids === 'hard') return ['grains', 'concentration', 'shape'];
  return service?.solids === 'soft' ? ['concentration'] : [];
}

/** The answers with another to what is carried along: those that are no longer asked go, so that none counts unseen. */
export function withSolids(service: ServiceFile | undefined, solids: ServiceFile['solids']): ServiceFile {
  const { grains, concentration, shape } = service ?? {};
  const asked = questionsFor({ solids });
  return {
    solids,
    ...(grains !== undefined && asked.includes('grains') && { grains }),
    ...(concentration !== undefined && asked.includes('concentration') && { concentration }),
    ...(shape !== undefined && asked.includes('shape') && { shape }),
  };
}
