/** Sentences that crush biscuits where crumbs stand in that are fine already. */
import { isCrumbs } from '../naming/crumb-names.ts';
import type { Mention } from '../naming/mention.ts';
import { namesOther, type Unboiled } from '../steps/boiling.ts';
import { namePattern } from './name-patterns.ts';
import { sentencesOf } from './sentences.ts';

const CRUSHES =
  /^(?:(?:first|next|then|to (?:make|prepare) the (?:crust|base)),? )?(?:finely )?(?:grind|crush|pulse|process|blitz|crumble|break|pulveri[sz]e|smash|bash|place|put|add|chop)\b/i;
const TO_CRUMBS =
  /\b(?:fine(?:ly)?|crumbs?|ground|crush\w*|food processor|blender|bag|sand|rolling pin)\b/i;

/** The step without its crushing; a step that is nothing else says so. */
export function withoutCrushing(text: string, mentions: readonly Mention[]): Unboiled {
  const crumbs = mentions.filter(isCrumbs);
  if (crumbs.length === 0) return { text, dropped: [] };
  const dropped = new Set<Mention>();
  const kept = sentencesOf(text).filter((sentence) => {
    if (!CRUSHES.test(sentence) || !TO_CRUMBS.test(sentence)) return true;
    const own = crumbs.find((one) => namePattern(one).test(sentence));
    if (own === undefined || namesOther(sentence, own, mentions)) return true;
    dropped.add(own);
    return false;
  });
  if (kept.length > 0 || dropped.size === 0) return { text: kept.join(' '), dropped: [...dropped] };
  const [first] = dropped;
  return {
    text: `Skip this step: the ${first?.newName ?? 'crumbs'} need no crushing.`,
    dropped: [...dropped],
  };
}
