/** The end of grains' cooking in methods of other languages, where they no longer cook in the pot. */
import type { Mention } from '../naming/mention.ts';
import { namePattern } from './name-patterns.ts';

const UNTIL =
  "(?:totdat|tot|bis|jusqu['’]à ce que|jusqu['’]à|hasta que|finché|fino a quando|fino a che|até que|até|tills|till dess|indtil|til)";
const ARTICLE =
  "(?:(?:de|het|der|die|das|le|la|les|el|los|las|il|lo|i|gli|o|os|a|as|al|alle|all|den|det) |l['’])?";
/** 'is de rijst gaar en kun je …' after a time: the clause goes on without the rice. */
const DONE_AND = '(?:is|zijn|ist|sind|er|är)';
const DONE = '(?:gaar|gar|weich|fertig|mør|møre|mør|klar|klart|färdigt|kokt)';

/** 'laat 15 minuten pruttelen totdat de rijst gaar is' without the rice's end. */
export function withoutForeignEnd(text: string, mention: Mention): string {
  const name = `(?:${namePattern(mention).source})`;
  return text
    .replace(new RegExp(`,? ${UNTIL} ${ARTICLE}${name}[^.;,]*(?=[.;,]|$)`, 'giu'), '')
    .replace(
      new RegExp(` ${DONE_AND} ${ARTICLE}${name} ${DONE},? (?:en|und|och|og) (?=\\p{L})`, 'giu'),
      ' ',
    );
}
