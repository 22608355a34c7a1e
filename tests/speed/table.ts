/**
 * Writes one table of times into the README, each beside a yardstick of the same run: how long this machine
 * parses a megabyte of JSON. Exits 1 when the figures come more than 300 ms after an empty popup, when a
 * thousand lines take more than twice a hundred's time a line, when the heap grows over 500 conversions, or
 * when the food table takes more than four times as long as parsing its files.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { availableParallelism, totalmem } from 'node:os';
import { clickTimes } from './click.ts';
import { FILES_PARSED, heapGrowth, leastTime, type Row, stageRows, TABLE_MADE } from './stages.ts';

const README = new URL('../../README.md', import.meta.url);
const START = '<!-- times -->';
const END = '<!-- /times -->';
const MOST_LATER_MS = 300;
const MOST_GROWTH_MB = 15;
const MOST_A_LINE = 2;
const MOST_TABLE = 4;

const megabyte = JSON.stringify(
  Array.from({ length: 20_000 }, (_, n) => ({ name: `line ${n}`, grams: n, known: true })),
);
const yardstick = (leastTime(() => JSON.parse(megabyte), 9) * 1e6) / megabyte.length;

const shown = (value: number): string => (value >= 10 ? value.toFixed(0) : value.toPrecision(2));
const line = ({ what, ms }: Row): string => `| ${what} | ${shown(ms)} | ${shown(ms / yardstick)} |`;

const rows = stageRows();
const growth = heapGrowth();
const click = await clickTimes();
const timeOf = (start: string): number =>
  rows.find(({ what }) => what.startsWith(start))?.ms ?? Number.NaN;

const memory = Math.round(totalmem() / 2 ** 30);
const text = [
  START,
  `Processor time on a machine with ${availableParallelism()} cores and ${memory} GB, Node ${process.versions.node.split('.')[0]}; the`,
  `yardstick, a megabyte of JSON parsed in the same run, took ${shown(yardstick)} ms. Written by \`npm run speed\`.`,
  '',
  '| what | ms | yardsticks |',
  '| --- | ---: | ---: |',
  ...rows.map(line),
  line({ what: 'Chromium, by the clock: click until an empty popup', ms: click.empty }),
  line({ what: '… until what a serving of the page has', ms: click.standing }),
  line({ what: '… until that and what can be done about it', ms: click.figures }),
  '',
  `500 conversions in a row left the heap ${Math.max(0, growth).toFixed(0)} MB larger.`,
  END,
].join('\n');

const readme = readFileSync(README, 'utf8');
const [from, to] = [readme.indexOf(START), readme.indexOf(END)];
if (from < 0 || to < from) throw new Error(`no ${START} … ${END} in the README`);
writeFileSync(README, readme.slice(0, from) + text + readme.slice(to + END.length));
console.log(text);

const faults = [
  click.figures - click.empty > MOST_LATER_MS &&
    `figures ${Math.round(click.figures - click.empty)} ms after an empty popup`,
  timeOf('1000 lines') / 10 > MOST_A_LINE * timeOf('100 lines') &&
    'a thousand lines take too long a line',
  timeOf(TABLE_MADE) > MOST_TABLE * timeOf(FILES_PARSED) && 'the food table takes too long to make',
  growth > MOST_GROWTH_MB && `the heap grew by ${growth.toFixed(0)} MB`,
].filter((fault) => fault !== false);
for (const fault of faults) console.log(`FAULT ${fault}`);
process.exitCode = faults.length === 0 ? 0 : 1;
