/** Schema.org Recipe as JSON-LD. */
import type { Adaptation, Nutrient } from '../model.ts';
import type { ExportOptions } from './scaled-adaptation.ts';
import { ESTIMATES, type ExportParts, exportParts, servingsText } from './shared-parts.ts';

const PROPERTIES: Partial<Record<Nutrient, string>> = {
  energyKcal: 'calories',
  carbohydrateG: 'carbohydrateContent',
  fiberG: 'fiberContent',
  sugarsG: 'sugarContent',
  proteinG: 'proteinContent',
  fatG: 'fatContent',
  saturatedG: 'saturatedFatContent',
  sodiumMg: 'sodiumContent',
};

const rounded = (value: number): number => Math.round(value * 10) / 10;

function nutrition({ nutrients, servings }: ExportParts): Record<string, string> {
  const figures: Record<string, string> = {
    '@type': 'NutritionInformation',
    servingSize: `1 of ${servingsText(servings)}`,
  };
  for (const { nutrient, after, unit } of nutrients) {
    const property = PROPERTIES[nutrient];
    if (property !== undefined && after !== null)
      figures[property] = `${rounded(after.best)} ${unit}`;
  }
  return figures;
}

/** What schema.org has no field for: figures before and after, what was not counted, cautions. */
function description(parts: ExportParts): string {
  const figures = parts.nutrients
    .filter(({ before, after }) => before !== null || after !== null)
    .map(({ name, beforeText, afterText }) => `${name} ${beforeText} to ${afterText}`);
  const uncounted = parts.uncounted.map(({ text, why }) => `${text} (${why})`);
  const changed = parts.adjustments.map(({ text }) => text);
  const texts = [
    parts.verdict,
    `A serving, ${parts.heads.before} and ${parts.heads.after}: ${figures.join('; ')}.`,
    parts.rule,
    parts.lowerBounds.length > 0 ? `At least: ${parts.lowerBounds.join(', ')}.` : '',
    uncounted.length > 0 ? `Not counted: ${uncounted.join('; ')}.` : '',
    changed.length > 0 ? `Changed after a bake: ${changed.join(' ')}` : '',
    ...parts.allergens,
    ...parts.cautions,
    ESTIMATES,
    `${parts.credit}.`,
  ];
  return texts.filter((text) => text !== '').join(' ');
}

/** A heading among the lines, as pages without a field for groups write it; none where it would read as an ingredient. */
const heading = (title: string | null): string[] =>
  title === null || title.length > 68 || /[\d¼½¾⅓⅔]/.test(title) ? [] : [`${title}:`];

function instructions(parts: ExportParts): unknown[] {
  const stepsOf = (rows: ExportParts['steps'][number]['rows']): unknown[] =>
    rows.map(({ after }) => ({ '@type': 'HowToStep', text: after }));
  return parts.steps.flatMap(({ title, rows }) =>
    title === null
      ? stepsOf(rows)
      : [{ '@type': 'HowToSection', name: title, itemListElement: stepsOf(rows) }],
  );
}

/**
 * The reworked recipe as schema.org JSON-LD (Recipe with NutritionInformation per serving, masses in
 * g, energy in kcal, sodium in mg). Safe to put inside a script element: '<' is escaped.
 */
export function toJsonLd(adaptation: Adaptation, options: ExportOptions = {}): string {
  const parts = exportParts(adaptation, options);
  const { recipe } = adaptation;
  const node = {
    '@context': 'https://schema.org',
    '@type': 'Recipe',
    name: parts.title,
    description: description(parts),
    ...(recipe.language === null ? {} : { inLanguage: recipe.language }),
    ...(recipe.author === null ? {} : { author: { '@type': 'Person', name: recipe.author } }),
    ...(recipe.url === null ? {} : { isBasedOn: recipe.url }),
    creditText: parts.credit,
    recipeYield: servingsText(parts.servings),
    recipeIngredient: parts.groups.flatMap(({ title, rows }) => [...heading(title), ...rows]),
    recipeInstructions: instructions(parts),
    nutrition: nutrition(parts),
  };
  return `${JSON.stringify(node, null, 2).replaceAll('<', '\\u003c')}\n`;
}
