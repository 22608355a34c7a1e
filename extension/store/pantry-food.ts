import * as z from 'zod';

/** A food the user has at home, likes, or never uses, by id and with the name it was chosen by. */
export const PantryFood = z.object({ foodId: z.string().min(1), foodName: z.string() });
export type PantryFood = z.infer<typeof PantryFood>;
