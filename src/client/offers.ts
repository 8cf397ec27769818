import { button, element } from './element.ts'

/** Something that may be done along with what was just done. */
export interface Offer {
  readonly words: string
  readonly act: () => void
}

const said = element('p', { class: 'said', role: 'status' })
const offered = element('div', { class: 'offered' })
const slip = element('div', { class: 'slip' }, said, offered)

/** Puts the place for news at the end of the page; a reader of screens hears what is said there. */
export function openSlip(): void {
  document.querySelector('main')?.append(slip)
}

/** Says what was done, and offers what may be meant as well. With an offer it stays until it is answered, else until the next thing is said. */
export function say(words: string, ...offers: readonly Offer[]): void {
  said.textContent = words
  slip.classList.toggle('open', offers.length > 0)
  offered.replaceChildren(...offers.map(({ words: name, act }) => button(name, () => {
    hush()
    act()
  })), ...(offers.length > 0 ? [button('No', hush)] : []))
}

function hush(): void {
  said.textContent = ''
  offered.replaceChildren()
  slip.classList.remove('open')
}

/** Shows words that somebody must see, until the next thing is said. */
export function tell(words: string, ...offers: readonly Offer[]): void {
  say(words, ...offers)
  slip.classList.add('open')
  if (offers.length === 0) offered.replaceChildren(button('Close', hush))
}
