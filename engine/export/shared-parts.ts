/** What every export says, before it takes a format. */
import type {
  Adaptation,
  Interval,
  Nutrient,
  RewrittenLine,
  RewrittenStep,
  Tally,
} from '../model.ts';
import { NUTRIENT_NAMES, showNutrient } from '../tally/displayed-figures.ts';
import { stillContainsText, verdictText } from '../tally/verdict/verdict-text.ts';
import { type ExportOptions, scaledAdaptation } from './scaled-adaptation.ts';

/** Stands beside the figures in every export. */
export const ESTIMATES = 'Estimates. Not for working out insulin doses.';

export interface NutrientRow {
  nutrient: Nutrient;
  name: string;
  unit: 'g' | 'kcal' | 'mg';
  before: Interval | null;
  after: Interval | null;
  beforeText: string;
  afterText: string;
}

export interface UncountedRow {
  text: string;
  why: string;
}

export interface Part<Row> {
  title: string | null;
  rows: Row[];
}

export interface ExportParts {
  title: string;
  /** 'Reworked from “Loaf” by A. Baker, https://…'. */
  credit: string;
  url: string | null;
  servings: number;
  /** Formula behind the net carbs, in words. */
  rule: string;
  /** The answer about the budget, in words. */
  verdict: string;
  nutrients: NutrientRow[];
  /** Heads of the figures before and after; they name the piece where it is another one. */
  heads: { before: string; after: string };
  groups: Part<string>[];
  steps: Part<RewrittenStep>[];
  changes: { from: string; to: string; why: string; effect: string }[];
  /** Changes accepted after earlier bakes, in words. */
  adjustments: { text: string; why: string }[];
  uncounted: UncountedRow[];
  lowerBounds: string[];
  allergens: string[];
  cautions: string[];
}

const POLYOL_WORDS: Record<Tally['rule']['polyols'], string> = {
  half: 'less half of the polyols (all of the erythritol) and the allulose',
  half_over_5g: 'less half of the polyols above 5 g a serving and the allulose',
  energy: 'less the polyols and allulose as far as they bring no energy',
  none: 'with polyols and allulose counted in full',
  all: 'less all polyols and the allulose',
};

/** The net-carb rule in words. */
export function ruleText({ region, polyols }: Tally['rule']): string {
  const start =
    region === 'us'
      ? 'total carbohydrate less fibre'
      : 'carbohydrate, which in the EU is without fibre';
  return `Net carbs: ${start}, ${POLYOL_WORDS[polyols]}.`;
}

const unitOf = (nutrient: Nutrient): NutrientRow['unit'] =>
  nutrient === 'energyKcal' ? 'kcal' : nutrient === 'sodiumMg' ? 'mg' : 'g';

function nutrientRows({ before, after }: Adaptation): NutrientRow[] {
  return (Object.keys(NUTRIENT_NAMES) as Nutrient[]).map((nutrient) => {
    const show = (tally: Tally): string =>
      showNutrient(nutrient, tally.perServing[nutrient], {
        range: nutrient === 'netCarbsG' ? 'always' : 'auto',
        lacking: tally.incomplete[nutrient]?.length ?? 0,
      });
    return {
      nutrient,
      name: NUTRIENT_NAMES[nutrient],
      unit: unitOf(nutrient),
      before: before.perServing[nutrient],
      after: after.perServing[nutrient],
      beforeText: show(before),
      afterText: show(after),
    };
  });
}

/** '12', '2.5' */
export const piecesOf = (servings: number): string => String(Math.round(servings * 10) / 10);

function headsOf({ before, after }: Adaptation): ExportParts['heads'] {
  if (before.servings === after.servings) return { before: 'before', after: 'after' };
  return {
    before: `before (1 of ${piecesOf(before.servings)})`,
    after: `after (1 of ${piecesOf(after.servings)})`,
  };
}

/** Runs of neighbours with the same title. */
function parted<Row>(rows: readonly Row[], titleOf: (row: Row) => string | null): Part<Row>[] {
  const parts: Part<Row>[] = [];
  for (const row of rows) {
    const last = parts.at(-1);
    if (last !== undefined && last.title === titleOf(row)) last.rows.push(row);
    else parts.push({ title: titleOf(row), rows: [row] });
  }
  return parts;
}

/** The reworked recipe's ingredient lines, in order. */
const linesAfter = (lines: readonly RewrittenLine[]): (RewrittenLine & { after: string })[] =>
  lines.flatMap((line) => (line.after === null ? [] : [{ ...line, after: line.after }]));

function creditText({ recipe }: Adaptation): string {
  const by = recipe.author === null ? '' : ` by ${recipe.author}`;
  const at = recipe.url === null ? '' : `, ${recipe.url}`;
  return `Reworked from “${recipe.title}”${by}${at}`;
}

function changeRows({ plan }: Adaptation): ExportParts['changes'] {
  const grams = (value: number): string => `${Math.round(value * 10) / 10} g`;
  return plan.swaps.map(({ from, to, keptGrams, why, effect }) => {
    const kept = from !== null && keptGrams > 0 ? [`${grams(keptGrams)} ${from.food}`] : [];
    const now = [...kept, ...to.map((food) => `${grams(food.grams)} ${food.food}`)];
    return {
      from: from === null ? 'added' : `${grams(from.grams)} ${from.food}`,
      to: now.length > 0 ? now.join(' + ') : 'left out',
      why,
      effect,
    };
  });
}

function allergenTexts(adaptation: Adaptation): string[] {
  const { allergensAdded, allergensRemoved, stillContains } = adaptation;
  const texts: string[] = [];
  if (stillContains.length > 0) texts.push(stillContainsText(stillContains));
  if (allergensAdded.length > 0) texts.push(`New allergens: ${allergensAdded.join(', ')}.`);
  if (allergensRemoved.length > 0) texts.push(`No longer in it: ${allergensRemoved.join(', ')}.`);
  return texts;
}

/** Characters that no one sees: they may hide text or turn its direction. */
const UNSEEN =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: these are what is taken out
  /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f-\u009f\u200b\u202a-\u202e\u2060-\u2069\ufeff]/g;

/** Page text without characters that no one sees. */
export const seen = (text: string): string => text.replace(UNSEEN, '');

/**
 * Spreadsheets run what starts like a formula, also behind blanks or in full-width letters, so a
 * cell or line of words never does.
 */
export const unrun = (text: string): string =>
  /^\s*[=+\-@＝＋－＠]|^[\t\r\n]/.test(text) ? `'${text}` : text;

/** Everything an export holds, with figures as texts where they are read by people. */
export function exportParts(whole: Adaptation, options: ExportOptions = {}): ExportParts {
  const adaptation = scaledAdaptation(whole, options);
  const { recipe, after, lines, steps, cautions, goals } = adaptation;
  const lowerBounds = Object.keys(after.incomplete).map(
    (nutrient) => NUTRIENT_NAMES[nutrient as Nutrient],
  );
  return {
    title: recipe.title,
    credit: creditText(adaptation),
    url: recipe.url,
    servings: after.servings,
    rule: ruleText(after.rule),
    verdict: verdictText(adaptation.verdict),
    nutrients: nutrientRows(adaptation),
    heads: headsOf(adaptation),
    groups: parted(linesAfter(lines), ({ group }) => group).map(({ title, rows }) => ({
      title,
      rows: rows.map((row) => row.after),
    })),
    steps: parted(steps, ({ section }) => section),
    changes: changeRows(adaptation),
    adjustments: goals.adjustments.map(({ text, why }) => ({ text, why })),
    uncounted: after.uncounted.map(({ text, why }) => ({ text, why })),
    lowerBounds,
    allergens: allergenTexts(adaptation),
    cautions: cautions.filter(({ code }) => code !== 'ESTIMATES').map(({ text }) => text),
  };
}

/** '12 servings', '1 serving'. */
export const servingsText = (servings: number): string =>
  `${Math.round(servings * 10) / 10} ${servings === 1 ? 'serving' : 'servings'}`;
