/**
 * The rules of the day: which steps a job needs, how long each takes, what waits for what, when the hands may work. A checker, not a
 * scheduler: it takes a job and a result and says in sentences where the plan breaks a rule. Minutes from zero.
 */
import { complaints } from './complaints.mjs';
import { breachesOfFigures, coatOfJob, fillerOfJob, minutesAt, spanAt } from './figures.mjs';
import { isOpen, MOMENT } from './shop-clock.mjs';

/** What a shop takes for a step that the job gives no time for, min; wash to wipe and dressing hard edges each part, dress each mix. */
const USUAL = {
  wash: 20,
  blast: 30,
  blowDown: 5,
  wipe: 5,
  flashOff: 10,
  dress: 8,
  touchTest: 2,
  dressHard: 15,
  check: 20,
  assemble: 60,
  test: 30,
};
const USUAL_MIX_TIME = 2;
const WAITING = new Set(['flash-off', 'firm-up', 'overcoat', 'harden']);
/** Not before, in this order, for each part. */
const PREPARATION = ['wash', 'blast', 'blow-down', 'wipe', 'flash-off'];
const TROUBLES = [null, 'window-missed', 'outside-shift'];

/** Everything in a result that its job does not bear out: figures, plan, and the same day in a colder and a warmer shop. */
export function breaches(job, result, others = []) {
  return [...breachesOfFigures(job, result), ...breachesOfPlan(job, result), ...elsewhere(result, others)];
}

/** The job with the part at another temperature. */
export function jobAt(job, surface) {
  return { ...job, climate: { ...job.climate, surface } };
}

/** `others`: { surface, result } of the altered jobs. */
function elsewhere({ day }, others) {
  const { list, say, near } = complaints();
  for (const { surface, result } of others) {
    const found = day.elsewhere.find((one) => one.surface === surface);
    if (found === undefined) say(`day.elsewhere says nothing of ${surface} degC`);
    else {
      near(`day.elsewhere at ${surface} degC: end`, found.end, result.day.end);
      near(`day.elsewhere at ${surface} degC: handsOn`, found.handsOn, result.day.handsOn);
      near(`day.elsewhere at ${surface} degC: mixes`, found.mixes, result.filler.batches.length);
    }
  }
  return list;
}

function breachesOfPlan(job, result) {
  const steps = neededSteps(job, result);
  const { list, that, near } = complaints();
  const found = new Map(result.plan.map((step) => [step.id, step]));
  that(found.size === result.plan.length, 'two steps have one id');
  for (const id of steps.keys()) that(found.has(id), `${id} is missing`);
  for (const id of found.keys()) that(steps.has(id), `${id} has no business in this plan`);
  if (list.length > 0) return list;
  near('day.end', result.day.end, Math.max(0, ...result.plan.map(endOf)));
  const hands = result.plan.filter((step) => step.hands);
  near(
    'day.handsOn',
    result.day.handsOn,
    hands.reduce((sum, step) => sum + step.minutes, 0),
  );
  that((result.day.start ?? undefined) === job.plan?.start, `day.start is ${result.day.start}`);
  for (const step of result.plan) {
    const { id, start, minutes } = step;
    const needed = steps.get(id);
    that(start >= 0 && Number.isFinite(start), `${id} starts at ${start}`);
    near(`${id} minutes`, minutes, id === 'harden' ? hardening(job, result, start) : needed.minutes);
    that(step.hands === !WAITING.has(needed.kind), `${id} hands is ${step.hands}`);
    that(step.kind === needed.kind, `${id} is of kind ${step.kind}`);
    that(sameSet(step.parts, needed.parts), `${id} is of ${step.parts}, should be of ${[...needed.parts]}`);
    for (const before of new Set([...step.after, ...needed.after])) {
      const other = found.get(before);
      if (other === undefined) that(false, `${id} waits for ${before}, which is no step`);
      else
        that(
          start >= endOf(other) - MOMENT,
          `${id} starts at ${start}, before ${before} ends at ${endOf(other)}`,
        );
    }
  }
  // One mix can't firm up under itself: where the volume gives no more mixes, the step has to say so.
  result.filler.batches.forEach(({ covers }, i) => {
    const own = covers.some((low) => covers.some((top) => isOn(top, low)));
    that(
      !own || /layer/.test(found.get(`fill:${i + 1}`).note),
      `fill:${i + 1} lays two layers and keeps quiet`,
    );
  });
  return [...list, ...waits(job, result, found), ...windows(job, result, found), ...handsAtWork(job, hands)];
}

const endOf = ({ start, minutes }) => start + minutes;
const sameSet = (a, b) => a.length === new Set(b).size && a.every((one) => new Set(b).has(one));

/** From the last that goes on until both materials are hard, each from the end of its own last mix. */
function hardening(job, { plan }, start) {
  const hardAt = (kind, material) => {
    const ends = plan.filter((step) => step.kind === kind).map(endOf);
    if (ends.length === 0 || material.hard === undefined) return start;
    const { minutes, at } = material.hard;
    return Math.max(...ends) + minutesAt(minutes, at, material, job.climate?.surface);
  };
  return Math.max(start, hardAt('fill', fillerOfJob(job)), hardAt('coat', coatOfJob(job))) - start;
}

/** Every step the job needs by id, with its time and what it must not come before. */
function neededSteps(job, { filler, coat }) {
  const usual = { ...USUAL, ...job.plan?.minutes };
  const [putty, paint] = [fillerOfJob(job), coatOfJob(job)];
  const surface = job.climate?.surface;
  // Where the sheet is silent the working time is taken: no mix firms up sooner than it can still be worked.
  const firm = spanAt(putty.firmsUp, putty, surface)?.from ?? filler.workingTime;
  const over = spanAt(paint.overcoat, paint, surface)?.from ?? coat.workingTime;
  const steps = new Map();
  const need = (id, kind, parts, minutes, after) => steps.set(id, { kind, parts, minutes, after });
  const filled = filler.batches.map(({ covers }) => new Set(covers.map(({ part }) => part)));
  const coated = new Set(coat.layers.length > 0 ? coat.faces.map(({ part }) => part) : []);
  const all = new Set([...filled.flatMap((parts) => [...parts]), ...coated]);
  if (all.size === 0) return steps;
  const times = {
    wash: usual.wash,
    blast: usual.blast,
    'blow-down': usual.blowDown,
    wipe: usual.wipe,
    'flash-off': usual.flashOff,
  };
  for (const part of all)
    PREPARATION.forEach((kind, i) => {
      need(`${kind}:${part}`, kind, [part], times[kind], i === 0 ? [] : [`${PREPARATION[i - 1]}:${part}`]);
    });
  filler.batches.forEach(({ placing }, i) => {
    const n = i + 1;
    const parts = filled[i];
    const dry = [...parts].map((part) => `flash-off:${part}`);
    const under = layersBelow(filler.batches, i).map((k) => `firm-up:${k + 1}`);
    need(`fill:${n}`, 'fill', parts, (putty.mixTime ?? USUAL_MIX_TIME) + placing, [...dry, ...under]);
    need(`firm-up:${n}`, 'firm-up', parts, firm, [`fill:${n}`]);
    need(`dress:${n}`, 'dress', parts, usual.dress, [`firm-up:${n}`]);
  });
  const dressed = filler.batches.map((_, i) => `dress:${i + 1}`);
  const dry = [...coated].map((part) => `flash-off:${part}`);
  for (const { number: c, mixes } of coat.layers) {
    const before = c === 1 ? [...dressed, ...dry] : [`touch-test:${c - 1}`];
    const ids = mixes.map(({ number }) => `coat:${c}.${number}`);
    mixes.forEach(({ placing }, k) => {
      need(ids[k], 'coat', coated, (paint.mixTime ?? USUAL_MIX_TIME) + placing, before);
    });
    if (c === coat.layers.length) continue;
    need(`overcoat:${c}`, 'overcoat', coated, over, ids);
    need(`touch-test:${c}`, 'touch-test', coated, usual.touchTest, [`overcoat:${c}`]);
  }
  const last = coat.layers.at(-1);
  const lastOnes = last
    ? last.mixes.map(({ number }) => `coat:${last.number}.${number}`)
    : filler.batches.map((_, i) => `fill:${i + 1}`);
  need('harden', 'harden', all, null, lastOnes);
  for (const part of all)
    need(`dress-hard:${part}`, 'dress-hard', [part], usual.dressHard, ['harden', ...dressed]);
  need(
    'check',
    'check',
    all,
    usual.check,
    [...all].map((part) => `dress-hard:${part}`),
  );
  need('assemble', 'assemble', all, usual.assemble, ['check']);
  need('test', 'test', all, usual.test, ['assemble']);
  return steps;
}

/** Numbers of the batches, counted from 0, that lay the layer just under one that batch `i` lays on the same face. Its own it can't wait for. */
function layersBelow(batches, i) {
  return batches.flatMap(({ covers }, k) =>
    k !== i && covers.some((low) => batches[i].covers.some((top) => isOn(top, low))) ? [k] : [],
  );
}

const isOn = (top, low) => top.part === low.part && top.face === low.face && top.pass === low.pass + 1;

/** Waiting begins the moment the work it waits for ends: nothing sets later because nobody looks. */
function waits(_job, { plan }, found) {
  const { list, near } = complaints();
  for (const { id, kind, start, after } of plan)
    if (WAITING.has(kind))
      near(`${id} start`, start, Math.max(...after.map((before) => endOf(found.get(before)))));
  return list;
}

/** Dressing while the putty lets itself be cut; the next coat while the last one still takes it. */
function windows(job, { coat, filler }, found) {
  const { list, that, near } = complaints();
  const surface = job.climate?.surface;
  const held = new Set();
  const hold = (id, opens, closes) => {
    const { start, minutes, window, trouble } = found.get(id);
    held.add(id);
    // Where the first mix is past its time before the last one has set there is no window to show, only the trouble.
    if (closes < opens - MOMENT) that(window === null, `${id} has a window that closes before it opens`);
    else {
      near(`${id} window.opens`, window?.opens ?? Number.NaN, opens);
      near(`${id} window.closes`, window?.closes ?? Number.NaN, closes);
    }
    that(start >= opens - MOMENT, `${id} starts at ${start}, its window opens at ${opens}`);
    const late = start + minutes > closes + MOMENT;
    const says = `${id} ends at ${start + minutes}, its window closes at ${closes}, trouble ${trouble}`;
    if (late)
      that(
        trouble !== null && (trouble === 'window-missed' || !isOpen(job.plan, start, start + minutes)),
        says,
      );
    else that(trouble !== 'window-missed', says);
  };
  const firm = spanAt(fillerOfJob(job).firmsUp, fillerOfJob(job), surface);
  if (firm !== null)
    filler.batches.forEach((_, i) => {
      const end = endOf(found.get(`fill:${i + 1}`));
      hold(`dress:${i + 1}`, end + firm.from, end + firm.to);
    });
  const over = spanAt(coatOfJob(job).overcoat, coatOfJob(job), surface);
  if (over !== null)
    coat.layers.slice(1).forEach(({ number: c, mixes }, i) => {
      const ends = coat.layers[i].mixes.map((mix) => endOf(found.get(`coat:${c - 1}.${mix.number}`)));
      for (const mix of mixes)
        hold(`coat:${c}.${mix.number}`, Math.max(...ends) + over.from, Math.min(...ends) + over.to);
    });
  for (const { id, window, trouble } of found.values()) {
    that(held.has(id) || window === null, `${id} has a window that nothing gives it`);
    that(held.has(id) || trouble !== 'window-missed', `${id} missed a window it has not got`);
    that(TROUBLES.includes(trouble), `${id} has the unknown trouble ${trouble}`);
  }
  return list;
}

/** One pair of hands, and the hours of the shop. */
function handsAtWork(job, hands) {
  const { list, that } = complaints();
  const byStart = hands.toSorted((a, b) => a.start - b.start || endOf(a) - endOf(b));
  byStart.forEach((step, i) => {
    const { id, start, trouble } = step;
    const next = byStart[i + 1];
    that(!next || next.start >= endOf(step) - MOMENT, `${id} and ${next?.id} want the hands at once`);
    const open = isOpen(job.plan, start, endOf(step));
    that(
      open || trouble !== null,
      `${id} at ${start} for ${step.minutes} is outside the shop's hours, trouble ${trouble}`,
    );
    that(
      !open || trouble !== 'outside-shift',
      `${id} at ${start} is inside the shop's hours and says it is not`,
    );
  });
  return list;
}
