/** Whether a food's carbohydrate includes fibre, which the food table's own checks ask as well. */
export { basisByEnergy, settledBasis } from '../foods/carbohydrate-basis.ts';
