/** What is worked out of an object that never changes: once, and kept for as long as the object is. */
export function perObject<Key extends object, Value>(work: (of: Key) => Value): (of: Key) => Value {
  const kept = new WeakMap<Key, { value: Value }>();
  return (of) => {
    let found = kept.get(of);
    if (found === undefined) {
      found = { value: work(of) };
      kept.set(of, found);
    }
    return found.value;
  };
}
