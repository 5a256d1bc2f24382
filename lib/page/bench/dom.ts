type Child = Node | string | undefined | false;

interface Attributes {
  readonly [name: string]: string | number | boolean | undefined;
}

/** An element with attributes and children; `true` is an attribute without a value, `false` and undefined are none. */
export function el<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) setAttribute(element, name, value);
  element.append(...children.filter((child) => child !== undefined && child !== false));
  return element;
}

/** Sets an attribute, or takes it away. */
export function setAttribute(element: Element, name: string, value: string | number | boolean | undefined): void {
  if (value === undefined || value === false) element.removeAttribute(name);
  else if (element.getAttribute(name) !== `${value}`) element.setAttribute(name, value === true ? '' : `${value}`);
}

/** A button that does something. */
export function button(text: string, onClick: () => void, attributes: Attributes = {}): HTMLButtonElement {
  const made = el('button', { type: 'button', ...attributes }, text);
  made.addEventListener('click', onClick);
  return made;
}

/** Sets a text, if it is another one: what stays the same is not drawn or read out again. */
export function setText(element: HTMLElement, text: string): void {
  if (element.textContent !== text) element.textContent = text;
}

/**
 * Gives an element other children, and puts the focus where it was: on the child with the same `data-key`. Details that
 * were open stay open.
 */
export function refill(element: HTMLElement, children: readonly Child[]): void {
  const keyOf = (node: Element | null): string | undefined => (node as HTMLElement | null)?.dataset['key'];
  const focused = element.contains(document.activeElement) ? keyOf(document.activeElement) : undefined;
  const open = new Set([...element.querySelectorAll('details[open]')].map(keyOf));
  element.replaceChildren(...children.filter((child) => child !== undefined && child !== false));
  for (const details of element.querySelectorAll('details')) details.open ||= open.has(keyOf(details) ?? '');
  if (focused === undefined) return;
  const same = [...element.querySelectorAll<HTMLElement>('[data-key]')].find((node) => keyOf(node) === focused);
  (same ?? element).focus();
}

/** Runs a filling only when what it is made from has changed. */
export function onlyWhenNew<T>(fill: (value: T) => void): (value: T) => void {
  let last: string | undefined;
  return (value) => {
    const key = JSON.stringify(value);
    if (key === last) return;
    last = key;
    fill(value);
  };
}
