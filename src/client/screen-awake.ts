import { element } from './element.ts'
import { keepSettings, keptSettings } from './kept.ts'

/** Offers to keep the screen on while the page is in sight, where the browser can do that. */
export function offerScreenAwake(place: Element): void {
  if (!('wakeLock' in navigator)) return
  const box = element('input', { type: 'checkbox', name: 'awake' })
  box.checked = keptSettings().awake === true
  let lock: WakeLockSentinel | undefined
  async function hold(): Promise<void> {
    try {
      if (box.checked && document.visibilityState === 'visible') lock ??= await navigator.wakeLock.request('screen')
      else if (!box.checked) await lock?.release()
    } catch {
      // A device that saves its battery refuses: the screen goes dark as always.
    }
    if (lock?.released || !box.checked) lock = undefined
  }
  box.addEventListener('change', () => {
    keepSettings({ awake: box.checked })
    void hold()
  })
  // The lock ends whenever the page goes out of sight.
  document.addEventListener('visibilitychange', () => {
    if (lock?.released) lock = undefined
    void hold()
  })
  place.append(element('label', { class: 'with-box' }, box, 'Keep the screen on'))
  void hold()
}
