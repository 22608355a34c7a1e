/** What stands behind the figures, and behind what is kept. */
import { FiguresMade } from '../../../ui/about/figures-made.tsx';
import { KeptWhere } from '../../../ui/about/kept-where.tsx';
import type { PlaceProps } from '../kitchen.ts';

export const FiguresMadePlace = () => <FiguresMade />;

export const PrivacyPlace = ({ kitchen }: PlaceProps) => <KeptWhere store={kitchen.store} />;
