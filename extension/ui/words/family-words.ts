/** Kinds of dish in the user's language. */
import type { Family } from '../../../engine/model.ts';
import { type MessageKey, say } from './say.ts';

const WORDS: Record<Family, MessageKey> = {
  'lean-yeast-bread': 'familyLeanBread',
  'enriched-yeast-bread': 'familyRichBread',
  flatbread: 'familyFlatbread',
  tortilla: 'familyTortilla',
  'quick-bread': 'familyQuickBread',
  pancake: 'familyPancake',
  biscuit: 'familyBiscuit',
  cookie: 'familyCookie',
  cake: 'familyCake',
  brownie: 'familyBrownie',
  'pie-crust': 'familyPieCrust',
  choux: 'familyChoux',
  cracker: 'familyCracker',
  'fresh-pasta': 'familyFreshPasta',
  'pasta-dish': 'familyPastaDish',
  'rice-dish': 'familyRiceDish',
  'potato-dish': 'familyPotatoDish',
  'breaded-food': 'familyBreaded',
  'thickened-sauce': 'familyThickSauce',
  'sweet-sauce': 'familySweetSauce',
  'frozen-dessert': 'familyFrozen',
  custard: 'familyCustard',
  candy: 'familyCandy',
  other: 'familyOther',
};

export const familyWord = (family: Family): string => say(WORDS[family]);
