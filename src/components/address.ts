/** An address on this site from a path below its root: `patterns/skiff-cushion/` gives `/patterns/skiff-cushion/`. */
export function address(path: string): string {
  const base = import.meta.env.BASE_URL
  return `${base.endsWith('/') ? base : `${base}/`}${path}`
}
