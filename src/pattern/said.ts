/** What is left of an object when everything that is not said is gone: "not there" rather than "there, but undefined". */
export type Said<T> = { readonly [K in keyof T as undefined extends T[K] ? never : K]: T[K] } & {
  readonly [K in keyof T as undefined extends T[K] ? K : never]?: Exclude<T[K], undefined>
}

/** Leaves out the keys whose value is undefined. */
export function said<T extends object>(all: T): Said<T> {
  return Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined)) as Said<T>
}
