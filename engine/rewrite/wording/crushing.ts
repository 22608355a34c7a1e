/** Sentences that crush biscuits where crumbs stand in that are fine already. */
import { isCrumbs } from '../naming/crumb-names.ts';
import type { Mention } from '../naming/mention.ts';
import { namesOther, type Unboiled } from '../steps/boiling.ts';
import { namePattern } from './name-patterns.ts';
import { sentencesOf } from './sentences.ts';

const CRUSHES =
  /^(?:(?:first|next|then|to (?:make|prepare) the (?:crust|base)),? )?(?:(?:in|using) (?:the bowl of )?(?:a|your|the) (?:large |small )?(?:food processor|blender),? )?(?:finely )?(?:grind|crush|pulse|process|blitz|crumble|break|pulveri[sz]e|smash|bash|place|put|add|chop)\b/i;
const TO_CRUMBS =
  /\b(?:fine(?:ly)?|crumbs?|ground|crush\w*|food processor|blender|bag|sand|rolling pin)\b/i;

const PULSES =
  /(?<!\bto )\b(?:pulse|process|blitz|blend)(?= (?:again |briefly |together |just )*(?:until|to|till)\b)/gi;

/** Nothing is pulsed where no machine is left: it is stirred. */
const stirred = (text: string): string =>
  /\b(?:food )?processor\b|\bblender\b/i.test(text)
    ? text
    : text.replace(PULSES, (verb) => (/^[A-Z]/.test(verb) ? 'Stir' : 'stir'));

/** 'Add to a bowl' behind a crushing that is gone needs its object. */
const withObject = (text: string, crumbs: string): string =>
  text.replace(
    /^(Add|Transfer|Pour|Place|Put|Tip|Empty)(?: them| it)?(?= (?:to|into|out onto|in (?:a|an|your)) )/,
    `$1 the ${crumbs}`,
  );

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
  if (dropped.size === 0) return { text: kept.join(' '), dropped: [] };
  const [first] = dropped;
  if (kept.length > 0) {
    const rest = withObject(kept.join(' '), first?.newName ?? 'crumbs');
    return { text: stirred(rest), dropped: [...dropped] };
  }
  return {
    text: `Skip this step: the ${first?.newName ?? 'crumbs'} need no crushing.`,
    dropped: [...dropped],
  };
}
