/** Names of rows and variables. */
import type { Section } from '../dish/dish.ts';

/** Id of a section's row or variable: the main section's has no number. */
export const idIn = (section: Pick<Section, 'id'>, id: string): string =>
  section.id === 0 ? id : `${id} ${section.id}`;
