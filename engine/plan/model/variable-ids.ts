/** Names of rows and variables. */
import type { Food } from '../../model.ts';
import type { Section } from '../dish/dish.ts';

/** Id of a section's row or variable: the main section's has no number. */
export const idIn = (section: Pick<Section, 'id'>, id: string): string =>
  section.id === 0 ? id : `${id} ${section.id}`;

/** Each part of a dish has its own addition, so that it can be told where it goes. */
export const additionKey = ({
  food,
  section,
}: {
  food: Pick<Food, 'id'>;
  section: number;
}): string => (section === 0 ? `new.${food.id}` : `new.${food.id}.${section}`);
