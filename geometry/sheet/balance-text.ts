/** The balance in words: a headline, sentences, rows for a table, what to watch, and how it was worked out. */
import type { Rotor } from '../job/job.ts';
import type { Caution } from '../job/warning.ts';
import type { BalanceResult, ProposalResult, VectorResult } from './balance-result.ts';
import { chanceWords, WAY_WORDS } from './balance-words.ts';
import type { Basis } from './basis.ts';
import { figure, gauge, plain } from './figure.ts';
import type { Headline } from './headline.ts';

const VERDICT_WORDS = { within: 'within the limit', check: 'check', over: 'over the limit' } as const;

/** To be read from two metres, and what belongs to it. */
export function balanceHeadline(result: BalanceResult): Headline {
  const { net, permissible, verdict, chanceOver, force, weightShare } = result;
  return {
    lead: `Balance: ${VERDICT_WORDS[verdict]}, ${vectorWords(net)} of ${figure(permissible)} g.mm permitted`,
    notes: [
      `pulls with ${figure(force)} N at speed, ${percent(weightShare)} of the rotor's weight; chance of being over: ${chanceWords(chanceOver)}`,
      'indicative; check on a balancing machine after a large repair',
    ],
  };
}

/** What the figures mean, one sentence each, both truths of the filler first. */
export function balanceLines(result: BalanceResult): string[] {
  return [
    ...truths(result),
    verdictSentence(result),
    ...massSentence(result),
    ...planeSentences(result),
    ...correctionSentences(result),
  ];
}

/** The filler adds weight, and is still too light: the two sentences people mix up. */
function truths({
  added,
  missing,
  fillerShare,
  net,
  uncorrected,
  corrections,
  asFound,
}: BalanceResult): string[] {
  if (missing.amount === 0 && added.amount === 0)
    return ['Nothing that is worn or filled pulls to one side.'];
  const share = fillerShare.toFixed(2);
  return [
    added.amount > 0
      ? `What the filler adds: ${vectorWords(added)}. The filler alone is heavy there.`
      : 'What the filler adds: nothing to one side.',
    `What is missing against the part as new: metal lost makes ${vectorWords(missing)}, on the far side of the wear.`,
    `Filler weighs ${share} of the metal it replaces, so a vane filled flush is still light there. Worn alike on all vanes, the pulls cancel, filled or not.`,
    ...(asFound.amount > 0 ? [`As found before the repair: ${vectorWords(asFound)}, counted in.`] : []),
    ...(corrections.amount > 0
      ? [
          `Before correction ${vectorWords(uncorrected)}; the corrections taken make ${vectorWords(corrections)}.`,
        ]
      : []),
    `Together the shaft feels ${vectorWords(net)}.`,
  ];
}

function verdictSentence({ verdict, ratio, chanceOver, standardError, permissible }: BalanceResult): string {
  const limit = `${figure(permissible)} g.mm`;
  const unsure = standardError > 0 ? ` Uncertain by +- ${figure(2 * standardError)} g.mm (2 se).` : '';
  if (verdict === 'over') return `That is ${figure(ratio)} times the limit of ${limit}.${unsure}`;
  const used = `That is ${percent(ratio)} of the limit of ${limit}`;
  if (verdict === 'within') return `${used}, and surely within it.${unsure}`;
  return `${used}, but it may be over: a chance of ${chanceWords(chanceOver)}.${unsure}`;
}

function massSentence({ mass, massEstimated }: BalanceResult): string[] {
  if (!massEstimated) return [];
  return [
    `The rotor was not weighed: ${figure(mass)} kg is the part alone, estimated from its sizes. A heavier rotor is permitted more.`,
  ];
}

function planeSentences({ planes }: BalanceResult): string[] {
  return (planes ?? []).map(
    ({ plane, z, permissible, ratio, ...vector }) =>
      `Plane ${plane} at z ${plain(z)} mm: ${vectorWords(vector)} of ${figure(permissible)} g.mm permitted there${ratio > 1 ? ', over' : ''}.`,
  );
}

function correctionSentences({ correction, verdict, planes }: BalanceResult): string[] {
  const { taken, proposals, impossible, atVanes } = correction;
  const done = taken.map(
    ({ words, mass, leaves }) => `Taken: ${words} (${gramsWords(mass)}${wallWords(leaves)}).`,
  );
  if (verdict === 'within') return done;
  const none =
    proposals.length === 0 && atVanes === null
      ? ['No correction of this kind brings it inside: have it balanced on a machine.']
      : [];
  const vanes =
    atVanes === null
      ? []
      : [
          `On an open impeller metal can only come off the vanes: ${atVanes
            .map(
              ({ vane, mass, radius }) => `${figure(mass)} g off vane ${vane} at radius ${figure(radius)} mm`,
            )
            .join(', ')}. Better have it balanced on a machine.`,
        ];
  const couple =
    planes !== null && proposals.length > 0
      ? ['The corrections below take out the pull, not the couple: check both planes on a machine.']
      : [];
  const why = [...new Set(impossible.map(({ reason }) => reason))].map((reason) => {
    const ways = impossible.filter((other) => other.reason === reason).map(({ way }) => WAY_WORDS[way]);
    return `Not possible: ${ways.join(', ').toLowerCase()}; ${reason}.`;
  });
  return [...done, ...none, ...vanes, ...couple, ...why];
}

export const VECTOR_HEADS = ['pull', '>g.mm', '>angle deg'] as const;

/** One row a vector, from what the filler adds to what is permitted. */
export function vectorRows(result: BalanceResult): string[][] {
  const { added, missing, asFound, corrections, net, permissible } = result;
  const row = (name: string, { amount, angle }: VectorResult): string[] => [
    name,
    figure(amount),
    amount === 0 ? '' : String(Math.round(angle) % 360),
  ];
  return [
    row('added by the filler', added),
    row('missing as metal', missing),
    ...(asFound.amount > 0 ? [row('as found', asFound)] : []),
    ...(corrections.amount > 0 ? [row('corrections taken', corrections)] : []),
    row('net', net),
    ['permitted', figure(permissible), ''],
  ];
}

export const PROPOSAL_HEADS = [
  '>no',
  '>off g',
  '>on g',
  '>leaves g.mm',
  '>of limit',
  '>wall left mm',
  'do',
] as const;

/** One row a proposal, least work first. */
export function proposalRows({ correction }: BalanceResult): string[][] {
  return correction.proposals.map((proposal, i) => [
    String(i + 1),
    figure(proposal.removed),
    figure(proposal.added),
    figure(proposal.residual.amount),
    percent(proposal.ratio),
    proposal.leaves === null ? '' : gauge(proposal.leaves),
    proposalWords(proposal),
  ]);
}

function proposalWords({ way, words }: ProposalResult): string {
  return `${WAY_WORDS[way]}: ${words.join('. Then: ')}.`;
}

/** Shown with every verdict. */
export function balanceCautions({ correction }: BalanceResult): Caution[] {
  const indicative: Caution = {
    code: 'balance-indicative',
    text: "The balance is indicative. Small repairs rarely upset it; after a large one check the rotor on a balancing machine. Keep to the maker's and the local rules.",
    source: 'Common practice; ISO 21940-11:2016',
  };
  if (correction.taken.length + correction.proposals.length === 0) return [indicative];
  const metal: Caution = {
    code: 'balance-correction',
    text: 'The shroud carries the vanes. Before you drill, skim or build up, make sure that the maker allows it there, and measure the wall.',
    source: 'Common practice',
  };
  return [indicative, metal];
}

/** How the figures were worked out, with their numbers and sources. */
export function balanceBasis(result: BalanceResult, rotor: Rotor): Basis[] {
  const { permissible, permissibleEccentricity, mass, net, force, standardError, chanceOver, added } = result;
  const turning = figure((2 * Math.PI * rotor.speed) / 60);
  return [
    {
      what: 'Unbalance',
      how: `Filler x its density, less lost metal x its density, plus coat in wear that is left, the residual as found and the corrections taken; each times its distance from the shaft.`,
      source: 'Mechanics; the part as new is taken to be in balance',
    },
    {
      what: 'Permitted unbalance',
      how: `1000 x G ${plain(rotor.grade)} mm/s x ${figure(mass)} kg / ${turning} rad/s = ${figure(permissible)} g.mm, an eccentricity of ${figure(permissibleEccentricity)} um`,
      source: 'ISO 21940-11:2016, 6.3.3',
    },
    {
      what: 'Force',
      how: `${figure(net.amount)} g.mm x (${turning} rad/s)^2 x 1e-6 = ${figure(force)} N`,
      source: 'Mechanics',
    },
    {
      what: 'Chance of being over',
      how:
        standardError === 0
          ? 'Nothing is taken to be uncertain.'
          : `Standard error ${figure(standardError)} g.mm: ${plain(rotor.densityError * 100)} % of the ${figure(added.amount)} g.mm added for the density of the mix, with the error of the fill volume; ${chanceWords(chanceOver)} by Rice's law.`,
      source: 'Noncentral chi-square, 2 degrees of freedom; errors add as squares, ISO 21940-14:2012',
    },
  ];
}

/** `5816 g.mm at 113 deg`. */
function vectorWords({ amount, angle }: VectorResult): string {
  const words = `${figure(amount)} g.mm`;
  return amount === 0 ? words : `${words} at ${Math.round(angle) % 360} deg`;
}

const percent = (share: number): string => `${(share * 100).toFixed(share < 0.1 ? 1 : 0)} %`;
const gramsWords = (mass: number): string => `${figure(Math.abs(mass))} g ${mass < 0 ? 'off' : 'on'}`;
const wallWords = (leaves: number | null): string => (leaves === null ? '' : `, leaves ${gauge(leaves)} mm`);
