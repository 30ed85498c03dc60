/**
 * A function with the same answers that keeps the last ones.
 *
 * In      a function that always answers the same for the same key, the key of what it is asked, and how many answers are kept at most.
 * Out     the function, with a memory of its own. Of the answers kept, the one longest not asked for goes first.
 */
export function remembering<Asked extends unknown[], Answer>(
  solve: (...asked: Asked) => Answer,
  keyOf: (...asked: Asked) => string,
  most: number,
): (...asked: Asked) => Answer {
  const kept = new Map<string, { readonly answer: Answer }>()
  return (...asked) => {
    const key = keyOf(...asked)
    const entry = kept.get(key) ?? { answer: solve(...asked) }
    kept.delete(key)
    kept.set(key, entry)
    if (kept.size > most) kept.delete(kept.keys().next().value as string)
    return entry.answer
  }
}
