/** A recipe's figures as one picture, SVG by itself: no font, style or address of anywhere else. */
import type { Adaptation } from '../../../engine/model.ts';
import { short } from '../figures/format.ts';
import { type LoafFigures, loafFigures } from '../figures/loaf/loaf-figures.ts';
import { cutAt, type Piece } from '../figures/loaf/loaf-scene.ts';
import {
  face,
  leftPiece,
  rightPiece,
  score,
  scoreStarts,
  wholeLoaf,
} from '../figures/loaf/loaf-shape.ts';
import { locale, say } from '../words/say.ts';
import { type CardText, cardText } from './card-text.ts';

export const CARD = { wide: 1200, high: 675 } as const;

/** The light linen of the screens: a card looks the same wherever it is seen. */
const INK = '#2d2019';
const SOFT = '#62503f';
const PAPER = '#f6efe2';
const STRIPE = '#93a6c6';
const LOOKS = {
  baked: { fill: '#d69a4e', line: '#6d3c0d', score: '#fbe9c6', edge: '#6d3c0d' },
  dough: { fill: '#efe1c6', line: '#8a755b', score: '#fdf9f1', edge: '#8a755b' },
} as const;
const SERIF = "Palatino, 'Book Antiqua', Georgia, 'Liberation Serif', serif";
const SANS = "'Segoe UI', 'Helvetica Neue', 'Noto Sans', 'Liberation Sans', sans-serif";

const EDGE = 64;
const ROOM = CARD.wide - 2 * EDGE;

/** Characters that no one sees are left out; the rest cannot end a text or an attribute. */
const safe = (text: string): string =>
  text
    .replace(/[\p{Cc}\p{Cf}\p{Cs}]/gu, '')
    .replace(/[&<>"']/g, (mark) => `&#${mark.charCodeAt(0)};`);

interface TextLook {
  size: number;
  serif?: boolean;
  bold?: boolean;
  fill?: string;
}

function text(
  words: string,
  x: number,
  y: number,
  { size, serif, bold, fill = INK }: TextLook,
): string {
  const family = serif ? SERIF : SANS;
  return `<text x="${x}" y="${y}" font-family="${family}" font-size="${size}"${bold ? ' font-weight="600"' : ''} fill="${fill}">${safe(words)}</text>`;
}

/** An average letter against the size of the type: measured on the fonts above, rounded up. */
const LETTER = 0.54;

/** Words in lines that fit the room; what does not fit in `most` lines ends with an ellipsis. */
export function wrapped(words: string, size: number, most: number): string[] {
  const room = Math.floor(ROOM / (LETTER * size));
  const lines: string[] = [''];
  for (const word of words.split(/\s+/)) {
    const last = lines.at(-1) ?? '';
    const joined = last === '' ? word : `${last} ${word}`;
    if ([...joined].length <= room || last === '') lines[lines.length - 1] = joined;
    else lines.push(word);
  }
  const short = (line: string): string =>
    [...line].length <= room ? line : `${[...line].slice(0, room - 1).join('')}…`;
  const shown = lines.slice(0, most).map(short);
  if (lines.length > most) shown[most - 1] = short(`${shown[most - 1]} …`.padEnd(room + 1, ' '));
  return shown;
}

const OUTLINES = { whole: wholeLoaf, left: leftPiece, right: rightPiece } as const;

function pieceDrawn(piece: Piece, look: keyof typeof LOOKS): string {
  const { fill, line, score: light, edge } = LOOKS[look];
  const body = `<path d="${OUTLINES[piece.kind](piece.box)}" fill="${fill}" stroke="${line}" stroke-width="2"/>`;
  const scores = scoreStarts(piece.box, look === 'baked' ? 0.8 : 1.2).map((start) => {
    const { lens, ear } = score(start, piece.box);
    return `<path d="${lens}" fill="${light}"/><path d="${ear}" fill="none" stroke="${edge}" stroke-width="1.5"/>`;
  });
  const cut =
    piece.kind === 'left'
      ? `<path d="${face(piece.box)}" fill="#fbe9c6" stroke="${line}" stroke-width="2"/>`
      : '';
  return body + scores.join('') + cut;
}

/** Dough above, loaf below, the knife through both; figures stand in the text beside. */
function loafDrawn({ before, after, budgetG }: LoafFigures, top: number): string {
  const full = Math.max(before.grams, after.grams, budgetG * 1.06, 0.1);
  const scale = (ROOM - 8) / full;
  const knife = 2 + budgetG * scale;
  const [doughFloor, floor] = [top + 52, top + 136];
  const dough = cutAt(before.grams * scale, knife, doughFloor, 46);
  const loaf = cutAt(after.grams * scale, knife, floor, 70);
  const board = [floor + 6, floor + 12]
    .map(
      (y, at) =>
        `<path d="M0 ${y}H${ROOM}" stroke="${STRIPE}" stroke-width="${at === 0 ? 4 : 2}"/>`,
    )
    .join('');
  return (
    `<g transform="translate(${EDGE} 0)">` +
    dough.map((piece) => pieceDrawn(piece, 'dough')).join('') +
    loaf.map((piece) => pieceDrawn(piece, 'baked')).join('') +
    board +
    `<path d="M${knife} ${top - 6}V${floor + 8}" stroke="${INK}" stroke-width="4" stroke-linecap="round"/>` +
    `${text(say('upToGrams', short(budgetG)), Math.round(knife) + 10, top - 2, { size: 20 })}</g>`
  );
}

function figuresDrawn({ figures }: CardText, y: number): string {
  const column = ROOM / figures.length;
  return figures
    .map(({ name, now, was }, at) => {
      const x = Math.round(EDGE + at * column);
      return (
        text(name, x, y, { size: 20, fill: SOFT }) +
        text(now, x, y + 36, { size: 30, bold: true }) +
        text(was, x, y + 64, { size: 20, fill: SOFT })
      );
    })
    .join('');
}

function footDrawn(said: CardText): string {
  const notes = [said.estimates, ...(said.uncounted === null ? [] : [said.uncounted])].join(' · ');
  return (
    `<path d="M${EDGE} 588H${CARD.wide - EDGE}" stroke="${STRIPE}" stroke-width="2"/>` +
    text(wrapped(said.credit, 20, 1)[0] ?? '', EDGE, 620, { size: 20 }) +
    text(wrapped(notes, 20, 1)[0] ?? '', EDGE, 650, { size: 20, fill: SOFT })
  );
}

/** The card as an SVG document. */
export function cardSvg(adaptation: Adaptation): string {
  const said = cardText(adaptation);
  const figures = loafFigures(adaptation);
  const title = wrapped(said.title, 48, 2);
  const under = 92 + 54 * title.length;
  const told = [said.title, said.now, said.was ?? '', said.credit, said.estimates].join('. ');
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${CARD.wide}" height="${CARD.high}" viewBox="0 0 ${CARD.wide} ${CARD.high}" role="img" xml:lang="${safe(locale())}">`,
    `<title>${safe(said.title)}</title><desc>${safe(told)}</desc>`,
    `<rect width="${CARD.wide}" height="${CARD.high}" fill="${PAPER}"/>`,
    ...title.map((line, at) =>
      text(line, EDGE, 92 + 54 * at, { size: 48, serif: true, bold: true }),
    ),
    text(said.now, EDGE, under, { size: 32, bold: true }),
    said.was === null ? '' : text(said.was, EDGE, under + 36, { size: 24, fill: SOFT }),
    figures === null ? '' : loafDrawn(figures, Math.max(under + 84, 268)),
    figuresDrawn(said, 498),
    footDrawn(said),
    '</svg>',
  ].join('\n');
}
