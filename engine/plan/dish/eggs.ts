import type { Food } from '../../model.ts';
import { classOf } from './knowledge.ts';

/** Whole eggs, whites and yolks, fresh or dried. */
export const isEgg = (food: Food): boolean => classOf(food)?.class === 'eggs';
