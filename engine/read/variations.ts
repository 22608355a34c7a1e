/** Parts a recipe whose list gives several versions of the dish, which nobody bakes together. */
import type { IngredientGroup, Step } from '../model.ts';
import { textKey } from './document/clean-text.ts';
import { type Draft, linesIn } from './draft.ts';
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

/** Fewest lines of a dish that has a variation, and the share of them that makes one a dish of its own. */
const FEWEST_BASE = 3;
const OWN_DISH = 0.6;

const linesOf = (groups: readonly IngredientGroup[]): number => linesIn({ groups }).length;

/** A dish and the one variation printed with it, which adds to its lines or is a list of its own. */
function baseAndVariation(draft: Draft): Draft[] {
  const title = draft.groups.map((group) => versionOf(group.title)).find((name) => name !== null);
  const common = draft.groups.filter((group) => versionOf(group.title) === null);
  if (!title || linesOf(common) < FEWEST_BASE) return [draft];
  const own = draft.groups.filter((group) => versionOf(group.title) !== null);
  const isWhole = linesOf(own) >= linesOf(common) * OWN_DISH;
  const variation = { title, groups: isWhole ? own : [...common, ...own] };
  const base = { title: '', groups: common };
  const both = [base, variation];
  return [
    { ...draft, groups: common, steps: stepsFor(draft.steps, base, both) },
    draftOf(draft, variation, both),
  ];
}

function draftOf(draft: Draft, version: Version, all: readonly Version[]): Draft {
  return {
    ...draft,
    title: draft.title === null ? version.title : `${draft.title} (${version.title})`,
    groups: version.groups,
    steps: stepsFor(draft.steps, version, all),
  };
}

/** One draft for each version, or the draft as it is when it gives no two of them. */
export function versionsOf(draft: Draft): Draft[] {
  const { common, versions } = versionsIn(draft.groups);
  if (versions.length === 1) return baseAndVariation(draft);
  const isWhole = ({ groups }: Version) => linesOf(groups) >= FEWEST;
  if (versions.length < 2 || !versions.every(isWhole)) return [draft];
  const whole = versions.map(({ title, groups }) => ({ title, groups: [...common, ...groups] }));
  return whole.map((version) => draftOf(draft, version, whole));
}
