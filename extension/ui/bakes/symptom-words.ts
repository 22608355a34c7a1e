/** What can go wrong, in four groups and in the user's language. */
import { bakeSymptoms } from '../../../engine/index.ts';
import type { Family } from '../../../engine/model.ts';
import { type MessageKey, say } from '../words/say.ts';

export const GROUPS = ['dough', 'crumb', 'taste', 'body'] as const;
export type Group = (typeof GROUPS)[number];

export const GROUP_WORDS: Record<Group, MessageKey> = {
  dough: 'faultsDough',
  crumb: 'faultsCrumb',
  taste: 'faultsTaste',
  body: 'faultsBody',
};

const DOUGH = new Set([
  'too-wet',
  'too-dry',
  'low-rise',
  'collapse',
  'lumps',
  'cracks',
  'spread',
  'no-spread',
]);
const TASTE = new Set([
  'dusty',
  'eggy',
  'crystals',
  'cooling',
  'bitter',
  'soapy',
  'too-sweet',
  'not-sweet',
  'too-salty',
  'needs-salt',
]);
const BODY = new Set(['stomach', 'glucose']);

/** Before the oven, in the mouth, in the body; all else is told by looking at the finished dish. */
export function groupOf(symptom: string): Group {
  if (DOUGH.has(symptom)) return 'dough';
  if (TASTE.has(symptom)) return 'taste';
  return BODY.has(symptom) ? 'body' : 'crumb';
}

const WORDS = {
  'too-wet': 'faultTooWet',
  'too-dry': 'faultTooDry',
  gummy: 'faultGummy',
  'low-rise': 'faultLowRise',
  collapse: 'faultCollapse',
  rubbery: 'faultRubbery',
  dry: 'faultDry',
  crumbly: 'faultCrumbly',
  greasy: 'faultGreasy',
  dusty: 'faultDusty',
  eggy: 'faultEggy',
  crystals: 'faultCrystals',
  cooling: 'faultCooling',
  bitter: 'faultBitter',
  'dark-raw': 'faultDarkRaw',
  pale: 'faultPale',
  spread: 'faultSpread',
  'not-crisp': 'faultNotCrisp',
  'no-spread': 'faultNoSpread',
  purple: 'faultPurple',
  green: 'faultGreen',
  soapy: 'faultSoapy',
  cracks: 'faultCracks',
  'pasta-apart': 'faultPastaApart',
  weeping: 'faultWeeping',
  stringy: 'faultStringy',
  lumps: 'faultLumps',
  curdled: 'faultCurdled',
  icy: 'faultIcy',
  stale: 'faultStale',
  'too-sweet': 'faultTooSweet',
  'not-sweet': 'faultNotSweet',
  'too-salty': 'faultTooSalty',
  'needs-salt': 'faultNeedsSalt',
  'sauce-thin': 'faultSauceThin',
  'sauce-thick': 'faultSauceThick',
  stomach: 'faultStomach',
  glucose: 'faultGlucose',
} as const satisfies Record<string, MessageKey>;

const isWorded = (id: string): id is keyof typeof WORDS => Object.hasOwn(WORDS, id);

/** The engine's own label where the screens have no word yet; an id that is gone stays an id. */
export function symptomWord(id: string, family: Family): string {
  if (isWorded(id)) return say(WORDS[id]);
  return bakeSymptoms(family).find((one) => one.id === id)?.label ?? id;
}
