/** The lines behind the figures on the screen, worked out when the first one is opened. */
import { createContext } from 'preact';
import { useContext, useMemo } from 'preact/hooks';
import { type Trace, traceFigures } from '../../../../engine/index.ts';
import type { Adaptation, Food } from '../../../../engine/model.ts';

export type LazyTrace = () => Trace;

export const TraceContext = createContext<LazyTrace>(() => ({ before: [], after: [] }));

/** A trace of this adaptation that is worked out once, at its first use. */
export function useLazyTrace(adaptation: Adaptation | null, ownFoods: readonly Food[]): LazyTrace {
  return useMemo(() => {
    let trace: Trace | null = null;
    return () => {
      trace ??= adaptation ? traceFigures(adaptation, ownFoods) : { before: [], after: [] };
      return trace;
    };
  }, [adaptation, ownFoods]);
}

export const useTrace = (): Trace => useContext(TraceContext)();
