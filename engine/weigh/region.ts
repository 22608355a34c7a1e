/** Whose cups and spoons a recipe means. */
import type { Recipe } from '../model.ts';
import type { Region } from '../units.ts';
import words from './data/region-words.json' with { type: 'json' };
import { hasWord, plain } from './line-words.ts';

type Votes = Record<Region, number>;

const TLD: Readonly<Record<string, Region>> = {
  uk: 'uk',
  ie: 'uk',
  au: 'au',
  nz: 'au',
  us: 'us',
  de: 'eu',
  at: 'eu',
  ch: 'eu',
  fr: 'eu',
  be: 'eu',
  nl: 'eu',
  es: 'eu',
  pt: 'eu',
  it: 'eu',
  se: 'eu',
  dk: 'eu',
  no: 'eu',
  fi: 'eu',
  pl: 'eu',
};

const LANGUAGE: Readonly<Record<string, Region>> = {
  'en-gb': 'uk',
  'en-ie': 'uk',
  'en-au': 'au',
  'en-nz': 'au',
  'en-us': 'us',
  'en-ca': 'us',
};

/** Only the last label of the host is looked at: it tells the country, not the site. */
function tldOf(url: string | null): string {
  const host = /^[a-z][a-z0-9+.-]*:\/\/(?:[^/?#@]*@)?([^/?#:]+)/i.exec(url ?? '')?.[1] ?? '';
  return host.slice(host.lastIndexOf('.') + 1).toLowerCase();
}

function addLanguage(votes: Votes, language: string | null): void {
  if (language === null || language === '') return;
  const tag = language.toLowerCase().replace('_', '-');
  const region = LANGUAGE[tag];
  if (region) votes[region] += 3;
  else if (!tag.startsWith('en')) votes.eu += 6;
}

function addWords(votes: Votes, text: string): void {
  for (const [region, list] of Object.entries(words)) {
    for (const word of list) if (hasWord(text, word)) votes[region as Region] += 1;
  }
}

function addUnits(votes: Votes, text: string): void {
  if (/\bsticks?\b.{0,20}butter|butter.{0,30}\bsticks?\b/.test(text)) votes.us += 2;
  if (/\d\s*(?:oz|ounces?|lbs?|pounds?)\b/.test(text)) votes.us += 1;
  if (/\bcups?\b|\d\s*c\b/.test(text)) {
    votes.us += 1;
    votes.au += 0.5;
  }
  if (/\b20\s?ml\b.{0,6}tablespoon|tablespoons?\s*=\s*20/.test(text)) votes.au += 5;
  if (/\d\s*(?:g|ml)\b/.test(text)) {
    votes.uk += 0.5;
    votes.au += 0.5;
    votes.eu += 0.5;
  }
  if (/degrees? ?f|°\s?f|\d\s?f\b/.test(text)) votes.us += 1;
  if (/gas (?:mark )?\d/.test(text)) votes.uk += 3;
}

/**
 * The region whose household measures the recipe uses, from its language tag, the country label of
 * its address, its units and its words. Without any sign it is 'us'.
 */
export function measureRegion(recipe: Recipe): Region {
  const votes: Votes = { us: 0.75, uk: 0, eu: 0, au: 0 };
  const lines = recipe.groups
    .flatMap((group) => group.lines)
    .slice(0, 200)
    .join('\n');
  const text = `${plain(recipe.title)}\n${plainLong(lines)}\n${plainLong(recipe.steps.map((step) => step.text).join('\n'))}`;
  const byTld = TLD[tldOf(recipe.url)];
  if (byTld) votes[byTld] += 4;
  addLanguage(votes, recipe.language);
  addWords(votes, text);
  addUnits(votes, text);
  const order: Region[] = ['us', 'uk', 'eu', 'au'];
  return order.reduce((best, region) => (votes[region] > votes[best] ? region : best), 'us');
}

const plainLong = (text: string): string => {
  const parts: string[] = [];
  for (let at = 0; at < Math.min(text.length, 12_000); at += 2_000) {
    parts.push(plain(text.slice(at, at + 2_000)));
  }
  return parts.join('');
};
