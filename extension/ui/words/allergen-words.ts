/** Allergens in the user's language. */
import type { Allergen } from '../../../engine/model.ts';
import { type MessageKey, say } from './say.ts';

const WORDS: Record<Allergen, MessageKey> = {
  celery: 'allergenCelery',
  coconut: 'allergenCoconut',
  crustaceans: 'allergenCrustaceans',
  egg: 'allergenEgg',
  fish: 'allergenFish',
  gluten: 'allergenGluten',
  lupin: 'allergenLupin',
  milk: 'allergenMilk',
  molluscs: 'allergenMolluscs',
  mustard: 'allergenMustard',
  peanut: 'allergenPeanut',
  sesame: 'allergenSesame',
  soy: 'allergenSoy',
  sulphites: 'allergenSulphites',
  'tree nuts': 'allergenTreeNuts',
  wheat: 'allergenWheat',
};

export const allergenWord = (allergen: Allergen): string => say(WORDS[allergen]);
