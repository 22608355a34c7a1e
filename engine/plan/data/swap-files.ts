/** Every file of swaps, in the order in which they are looked through. Add a file here when you add one. */
import biscuitsAndMixes from './swaps/biscuits-and-mixes.json' with { type: 'json' };
import breadsAndCrumbs from './swaps/breads-and-crumbs.json' with { type: 'json' };
import dairyAndDrinks from './swaps/dairy-and-drinks.json' with { type: 'json' };
import flours from './swaps/flours.json' with { type: 'json' };
import fruit from './swaps/fruit.json' with { type: 'json' };
import legumesNutsAndMeat from './swaps/legumes-nuts-and-meat.json' with { type: 'json' };
import lessOfIt from './swaps/less-of-it.json' with { type: 'json' };
import oatsAndCereals from './swaps/oats-and-cereals.json' with { type: 'json' };
import pasta from './swaps/pasta.json' with { type: 'json' };
import potatoesAndVegetables from './swaps/potatoes-and-vegetables.json' with { type: 'json' };
import riceAndGrains from './swaps/rice-and-grains.json' with { type: 'json' };
import saucesAndSoups from './swaps/sauces-and-soups.json' with { type: 'json' };
import sugars from './swaps/sugars.json' with { type: 'json' };
import sweets from './swaps/sweets.json' with { type: 'json' };
import thickenersAndCoatings from './swaps/thickeners-and-coatings.json' with { type: 'json' };
import wrapsAndPastry from './swaps/wraps-and-pastry.json' with { type: 'json' };

export const SWAP_FILES = {
  flours,
  'thickeners-and-coatings': thickenersAndCoatings,
  sugars,
  pasta,
  'rice-and-grains': riceAndGrains,
  'oats-and-cereals': oatsAndCereals,
  'potatoes-and-vegetables': potatoesAndVegetables,
  'breads-and-crumbs': breadsAndCrumbs,
  'wraps-and-pastry': wrapsAndPastry,
  'biscuits-and-mixes': biscuitsAndMixes,
  'legumes-nuts-and-meat': legumesNutsAndMeat,
  fruit,
  'dairy-and-drinks': dairyAndDrinks,
  'sauces-and-soups': saucesAndSoups,
  sweets,
  'less-of-it': lessOfIt,
};
