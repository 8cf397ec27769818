type Child = Node | string | undefined | false

/** An element with attributes (a function is a listener: `onclick`) and children; what is false or undefined is left out. */
export function element<Tag extends keyof HTMLElementTagNameMap>(
  tag: Tag, attributes: Readonly<Record<string, string | boolean | undefined | (() => void)>> = {}, ...children: readonly Child[]
): HTMLElementTagNameMap[Tag] {
  const made = document.createElement(tag)
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === 'function') made.addEventListener(name.slice(2), value)
    else if (value !== undefined && value !== false) made.setAttribute(name, value === true ? '' : value)
  }
  made.append(...children.filter((child): child is Node | string => child !== undefined && child !== false))
  return made
}

/** A button that does something. */
export function button(words: string, act: () => void, attributes: Readonly<Record<string, string | boolean | undefined>> = {}): HTMLButtonElement {
  return element('button', { type: 'button', ...attributes, onclick: act }, words)
}
