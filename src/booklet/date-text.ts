const months = ['January', 'February', 'March', 'April', 'May', 'June', 'July', 'August', 'September', 'October', 'November', 'December']

/** `2027-03-14` as people say it, `14 March 2027`: the day before the month, which both sides of the ocean can read. */
export function dateText(iso: string): string {
  const [, year, month, day] = /^(\d{4})-(\d{2})-(\d{2})$/.exec(iso) ?? []
  const name = months[Number(month) - 1]
  return name === undefined ? iso : `${Number(day)}\u00a0${name}\u00a0${year}`
}
