/** Parts a recipe whose list gives several versions of the dish, which nobody bakes together. */
import type { IngredientGroup, Step } from '../model.ts';
import { textKey } from './document/clean-text.ts';
import type { Draft } from './draft.ts';
import { isVersionTitle } from './markup/ingredient-values.ts';

type Version = { title: string; groups: IngredientGroup[] };

/** Fewest lines of one version. */
const FEWEST = 2;

/** The name of the version that a group's title gives: 'Sourdough version' of 'Sourdough version: starter'. */
function versionOf(title: string | null): string | null {
  const name = (title ?? '').split(/:\s/)[0] ?? '';
  return isVersionTitle(name) ? name : null;
}

/** The groups before the first version, and the versions with the groups that follow their titles. */
function versionsIn(groups: readonly IngredientGroup[]): {
  common: IngredientGroup[];
  versions: Version[];
} {
  const common: IngredientGroup[] = [];
  const versions: Version[] = [];
  for (const group of groups) {
    const title = versionOf(group.title);
    const last = versions.at(-1);
    if (title !== null && last?.title !== title) versions.push({ title, groups: [group] });
    else (last?.groups ?? common).push(group);
  }
  return { common, versions };
}

/** The steps without those under the name of another version. */
function stepsFor(steps: readonly Step[], version: Version, others: readonly Version[]): Step[] {
  const names = others.filter((one) => one !== version).map(({ title }) => textKey(title));
  return steps.filter(({ section }) => section === null || !names.includes(textKey(section)));
}

/** One draft for each version, or the draft as it is when it gives no two of them. */
export function versionsOf(draft: Draft): Draft[] {
  const { common, versions } = versionsIn(draft.groups);
  const isWhole = ({ groups }: Version) =>
    groups.reduce((sum, { lines }) => sum + lines.length, 0) >= FEWEST;
  if (versions.length < 2 || !versions.every(isWhole)) return [draft];
  return versions.map((version) => ({
    ...draft,
    title: draft.title === null ? version.title : `${draft.title} (${version.title})`,
    groups: [...common, ...version.groups],
    steps: stepsFor(draft.steps, version, versions),
  }));
}
