/** Keeps this page and what it needs for times without a network. A page that was opened from a disk needs nobody for that. */
export function keepForOffline(): void {
  const worker = document.querySelector<HTMLMetaElement>('meta[name=offline]')?.content
  if (!worker || !('serviceWorker' in navigator) || !location.protocol.startsWith('http')) return
  const keep = [location.pathname, ...[...document.querySelectorAll<HTMLAnchorElement>('.terms a')].map(({ pathname }) => pathname)]
  const made = performance.getEntriesByType('resource').map(({ name }) => name).filter((name) => name.startsWith(`${location.origin}/`) && name.includes('/_astro/'))
  void navigator.serviceWorker.register(worker).then(() => navigator.serviceWorker.ready).then(({ active }) => {
    active?.postMessage({ keep: [...new Set(keep)], made: [...new Set(made)] })
  }, () => {
    // Where a browser refuses workers, the page needs the network as any other page does.
  })
}
