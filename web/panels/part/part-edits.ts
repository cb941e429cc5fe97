/** Changes to the parts of a job. Pure: each takes a job and gives the new one; the job store refuses what brings faults. */
import type {
  BoltCircleFile,
  ImpellerFile,
  JobFile,
  OutlineFile,
  PartFile,
  WearPlateFile,
} from '../../../geometry/job/job-file.ts';
import { newPlateJob } from '../../../geometry/job/new-plate-job.ts';
import { newImpeller } from './new-impeller.ts';

export type PlateChange = (plate: WearPlateFile) => WearPlateFile;
export type ImpellerChange = (impeller: ImpellerFile) => ImpellerFile;

/** The job with one plate changed; a part of another kind stays as it is. */
export function withPlate(job: JobFile, index: number, change: PlateChange): JobFile {
  return withPart(job, index, (part) => (part.kind === 'wear-plate' ? change(part) : part));
}

/** The same with an impeller. */
export function withImpeller(job: JobFile, index: number, change: ImpellerChange): JobFile {
  return withPart(job, index, (part) => (part.kind === 'impeller' ? change(part) : part));
}

/** What a change is to a part of any kind. */
export function withPart(job: JobFile, index: number, change: (part: PartFile) => PartFile): JobFile {
  return { ...job, parts: job.parts.map((part, i) => (i === index ? change(part) : part)) };
}

/** The job with one more part, a usual one to be typed over, and its id. */
export function withNewPart(
  job: JobFile,
  kind: PartFile['kind'],
): { readonly job: JobFile; readonly id: string } {
  const part = kind === 'impeller' ? newImpeller() : newPlateJob().parts[0];
  const taken = new Set(job.parts.map(({ id }) => id));
  let id = part.id;
  for (let number = 2; taken.has(id); number++) id = `${part.id}-${number}`;
  return { job: { ...job, parts: [...job.parts, { ...part, id }] }, id };
}

/** The job without a part, and without what it says of that part alone. */
export function withoutPart(job: JobFile, index: number): JobFile {
  const { id } = job.parts[index];
  const { rotor, clearance, history, ...rest } = job;
  const overrule = job.repair?.overrule?.filter(({ at }) => at.split(':')[0] !== id);
  return {
    ...rest,
    parts: job.parts.filter((_, i) => i !== index),
    ...(overrule !== undefined && { repair: { ...job.repair, overrule } }),
    ...(rotor !== undefined && rotor.part !== id && { rotor }),
    ...(clearance !== undefined && clearance.plate !== id && clearance.impeller !== id && { clearance }),
    ...(history !== undefined && {
      history: { ...history, repairs: history.repairs?.filter(({ part }) => part !== id) },
    }),
  };
}

/** The part under another name, wherever the job speaks of it. */
export function withPartRenamed(job: JobFile, index: number, id: string): JobFile {
  const old = job.parts[index].id;
  const renamed = (name: string) => (name === old ? id : name);
  const place = (at: string) => {
    const [part, face] = at.split(':');
    return `${renamed(part)}:${face}`;
  };
  const { repair, rotor, clearance, history } = job;
  return {
    ...job,
    parts: job.parts.map((part, i): PartFile => (i === index ? { ...part, id } : part)),
    ...(repair && {
      repair: {
        ...repair,
        ...(repair.allowanceFaces && { allowanceFaces: repair.allowanceFaces.map(place) }),
        ...(repair.coatedFaces && { coatedFaces: repair.coatedFaces.map(place) }),
        ...(repair.overrule && {
          overrule: repair.overrule.map((rule) => ({ ...rule, at: place(rule.at) })),
        }),
      },
    }),
    ...(rotor && { rotor: { ...rotor, part: renamed(rotor.part) } }),
    ...(clearance && {
      clearance: { ...clearance, plate: renamed(clearance.plate), impeller: renamed(clearance.impeller) },
    }),
    ...(history?.repairs && {
      history: {
        ...history,
        repairs: history.repairs.map((repair) => ({ ...repair, part: renamed(repair.part) })),
      },
    }),
  };
}

/** A plate with rim and bore as one given by an outline, or back. Its marks and sections go: their coordinates would mean other places. */
export function asOutline(plate: WearPlateFile): WearPlateFile {
  const { outerDiameter = 300, boreDiameter, coneAngle, sections, ...rest } = plate;
  const half = outerDiameter / 2;
  const edge: OutlineFile['edge'] = [
    [-half, -half],
    [half, -half],
    [half, half],
    [-half, half],
  ];
  return { ...rest, outline: { edge, holes: [] }, wear: [] };
}

export function asRound(plate: WearPlateFile): WearPlateFile {
  const { outline, sections, ...rest } = plate;
  const reach = Math.max(...(outline?.edge ?? [[150, 0]]).map(([x, y]) => Math.hypot(x, y)));
  const outerDiameter = 2 * Math.ceil(reach);
  return {
    ...rest,
    outerDiameter,
    boreDiameter: Math.round(outerDiameter * 0.4),
    coneAngle: 0,
    boltHoles: [],
    wear: [],
  };
}

/** Circles a plate might have, likeliest first: the first that clears rim, bore and the other circles is taken. */
export function boltCircleChoices(plate: WearPlateFile): readonly BoltCircleFile[] {
  const reach = plate.outline?.edge.map(([x, y]) => 2 * Math.min(Math.abs(x), Math.abs(y))) ?? [];
  const outer = plate.outerDiameter ?? Math.min(...reach);
  const bore = plate.boreDiameter ?? 0;
  const holeDiameter = Math.max(1, Math.round(Math.min(14, (outer - bore) / 8)));
  return [0.85, 0.15, 0.5, 0.7, 0.3].map((share) => ({
    count: 6,
    circleDiameter: Math.round(bore + share * (outer - bore)),
    holeDiameter,
    startAngle: 0,
  }));
}

/** An impeller without its shroud: hub and vanes alone. What was marked or laid on the shroud goes with it. */
export function asOpen(impeller: ImpellerFile): ImpellerFile {
  const isKept = ({ face }: { readonly face: string }) => !face.startsWith('shroud/');
  const { wear, sections, ...rest } = impeller;
  return {
    ...rest,
    shroudThickness: 0,
    wear: wear.filter(isKept),
    ...(sections && { sections: sections.filter(isKept) }),
  };
}

/** An open impeller with a shroud behind its vanes, as thick as is usual for its size. */
export function asSemiOpen(impeller: ImpellerFile): ImpellerFile {
  return { ...impeller, shroudThickness: Math.max(1, Math.round(impeller.outerDiameter / 30)) };
}
