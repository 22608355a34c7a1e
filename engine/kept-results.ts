/** Keeps what a pure function gave for a text, for texts that come up again and again. */

/** The function with its last results kept, `most` of them at a time. */
export function keptResults<T>(most: number, make: (text: string) => T): (text: string) => T {
  const kept = new Map<string, T>();
  return (text) => {
    const known = kept.get(text);
    if (known !== undefined) return known;
    if (kept.size >= most) kept.clear();
    const made = make(text);
    kept.set(text, made);
    return made;
  };
}

/** The function with its results kept as long as what they are of. */
export function keptFor<K extends object, T>(make: (of: K) => T): (of: K) => T {
  const kept = new WeakMap<K, { made: T }>();
  return (of) => {
    const known = kept.get(of) ?? { made: make(of) };
    kept.set(of, known);
    return known.made;
  };
}
