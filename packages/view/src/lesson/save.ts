import type { Maker } from '../pictures/document.js';

/** A button that saves a text as a file of this name, without a server: nothing leaves the page. */
export function saveButton(maker: Maker, label: string, name: string, text: string): HTMLElement {
  const button = maker.html('button', { type: 'button', 'data-save': name }, `${label}: ${name}`);
  button.addEventListener('click', () => {
    const address = URL.createObjectURL(new Blob([text], { type: 'text/plain;charset=utf-8' }));
    const link = maker.html('a', { href: address, download: name });
    link.click();
    URL.revokeObjectURL(address);
  });
  return button;
}
