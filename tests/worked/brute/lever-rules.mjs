/** What each lever of a result would bring the gap to, against gap.mjs on the job with that lever pulled. */
import { complaints } from './complaints.mjs';
import { coatOfJob } from './figures.mjs';
import { gapOf } from './gap.mjs';
import { namedBy } from './samples.mjs';

/** mm beyond what the two samplings of the gap as it is are apart. */
const FINE = 2e-3;

export function breachesOfLevers(job, result, steps) {
  const { list, say, that } = complaints();
  const now = gapOf(job, steps);
  const off = (kind) => FINE + 1.5 * Math.abs(now.coated[kind] - result.clearance.coated[kind]);
  for (const lever of result.clearance.levers) {
    const pulled = pull(job, now, lever);
    if (pulled === null) {
      say(`what is the lever ${lever.kind}?`);
      continue;
    }
    const { coated } = gapOf(pulled, steps);
    for (const kind of ['least', 'mean', 'most']) {
      // What is bare metal at the edge of a region moves with its fill: a twentieth of a millimetre lies outside every region.
      const most = off(kind) + (lever.kind === 'fill-left' ? 0.05 : 0);
      that(
        Math.abs(lever.coated[kind] - coated[kind]) <= most,
        `lever ${lever.kind} ${lever.amount}: ${kind} is ${lever.coated[kind]}, should be ${coated[kind]}`,
      );
    }
  }
  return list;
}

function pull(job, now, { kind, amount }) {
  const { clearance, repair = {} } = job;
  const [plate, tips] = [`${clearance.plate}:face`, `${clearance.impeller}:vane-*/tip`];
  const coat = coatOfJob(job);
  const coated = {
    plate: now.running.coated ? [plate] : [],
    tips: now.tips.filter((tip) => tip.coated).map((tip) => `${clearance.impeller}:${tip.name}`),
  };
  const running = (more) => ({ ...job, repair: { ...repair, ...more } });
  const service = (more) => ({ ...job, clearance: { ...clearance, ...more } });
  switch (kind) {
    case 'flush':
      return running({ coatAllowance: 0 });
    case 'stop-short':
      return running({ coatAllowance: amount, allowanceFaces: [plate, tips] });
    case 'bare-tips':
      return running({ coatedFaces: coated.plate });
    case 'bare-plate':
      return running({ coatedFaces: coated.tips });
    case 'bare-both':
      return running({ coatedFaces: [] });
    case 'one-coat-less':
      return { ...job, coat: { ...coat, coats: coat.coats - 1 } };
    case 'shim':
      return service({ shim: (clearance.shim ?? 0) + amount });
    case 'dress-tips':
      return service({ dressTips: (clearance.dressTips ?? 0) + amount });
    case 'fill-left': {
      const kept = (repair.overrule ?? []).filter(
        ({ at }) => ![plate, tips].some((name) => namedBy(name, at)),
      );
      return running({ leaveBelow: 0.05, overrule: kept });
    }
    default:
      return null;
  }
}
