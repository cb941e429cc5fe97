import type { Caution } from '../job/warning.ts';

const LOCAL = "Follow your local rules and the product's own safety sheet.";

/**
 * What to watch for in the work that this job asks for. Reminders with their public source, not a risk assessment.
 * @param mixes   true when filler or coat is mixed at all
 * @param fills   true when filler is mixed: a mass that heats itself, and dust of dressing it
 * Sources were in force when written; rules change, so the text always points to the local ones.
 */
export function cautions({ mixes, fills }: { readonly mixes: boolean; readonly fills: boolean }): Caution[] {
  return [
    ISOLATE,
    ...(mixes ? [BLAST_DUST, SOLVENT, SKIN] : []),
    ...(fills ? [BATCH_HEAT, DRESSING_DUST] : []),
    RESTART,
  ].map((caution) => ({ ...caution, text: `${caution.text} ${LOCAL}` }));
}

const ISOLATE: Caution = {
  code: 'isolate',
  text: 'Isolate, lock off, drain and prove the pump dead before opening it.',
  source: 'US 29 CFR 1910.147; UK PUWER 1998 regulation 19',
};

const BLAST_DUST: Caution = {
  code: 'blast-dust',
  text: 'Blast with an abrasive that holds no silica, with extraction and supplied air; old scale and coating add to the dust.',
  source: 'US 29 CFR 1910.94(a), 1910.134, 1910.1053; UK COSHH 2002 schedule 2',
};

const SOLVENT: Caution = {
  code: 'solvent',
  text: 'Solvent wipe gives off flammable vapour: no hot work or sparks near, air the place, let it flash off before mixing.',
  source: 'US 29 CFR 1910.106; UK DSEAR 2002',
};

const SKIN: Caution = {
  code: 'skin',
  text: 'Unhardened resin and hardener can make the skin allergic for life. Wear gloves and sleeves, and keep both off the skin.',
  source: 'UK HSE research report RR79; UK COSHH 2002; US 29 CFR 1910.138, 1910.1200',
};

const BATCH_HEAT: Caution = {
  code: 'batch-heat',
  text: 'A large mixed mass heats itself, can smoke and sets early. Make no mix larger than it says here, spread leftovers thin, never seal them in.',
  source: 'Common practice; no public rule known',
};

const DRESSING_DUST: Caution = {
  code: 'dressing-dust',
  text: 'Dust of hardened filler holds fine mineral. Dress it with extraction, guard, mask and eye protection.',
  source: 'US 29 CFR 1910.1053, 1910.215, 1910.243',
};

const RESTART: Caution = {
  code: 'restart',
  text: 'Before restart turn the shaft by hand and feel for a rub, check the direction of rotation, fit the guards and stand clear of the plane of rotation.',
  source: 'US 29 CFR 1910.219',
};
