/** The lines behind the figures on the screen, worked out when the first one is opened. */
import { createContext } from 'preact';
import { useContext, useLayoutEffect, useMemo, useState } from 'preact/hooks';
import type { Trace } from '../../../../engine/index.ts';
import type { Adaptation, Food } from '../../../../engine/model.ts';

export type LazyTrace = () => Promise<Trace>;

const NOTHING: Trace = { before: [], after: [] };

export const TraceContext = createContext<LazyTrace>(async () => NOTHING);

async function traced(adaptation: Adaptation | null, ownFoods: readonly Food[]): Promise<Trace> {
  if (!adaptation) return NOTHING;
  const { traceFigures } = await import('../../../../engine/trace.ts');
  return traceFigures(adaptation, ownFoods);
}

/** A trace of this adaptation that is worked out once, at its first use. */
export function useLazyTrace(adaptation: Adaptation | null, ownFoods: readonly Food[]): LazyTrace {
  return useMemo(() => {
    let trace: Promise<Trace> | null = null;
    return () => {
      trace ??= traced(adaptation, ownFoods);
      return trace;
    };
  }, [adaptation, ownFoods]);
}

/** Null while it is worked out; `wanted` is false as long as nothing is opened. */
export function useTrace(wanted: boolean): Trace | null {
  const lazy = useContext(TraceContext);
  const [known, setKnown] = useState<{ of: LazyTrace; trace: Trace } | null>(null);
  // Before the screen is drawn, so that an open panel stays in sight while its figures change.
  useLayoutEffect(() => {
    if (wanted) void lazy().then((trace) => setKnown({ of: lazy, trace }));
  }, [lazy, wanted]);
  return known?.of === lazy ? known.trace : null;
}
