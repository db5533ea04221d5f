// Stands in the page as it is: unpacks the script of the page, which lies in it packed and in base64, and puts it into the page.
import { unpack } from './unpack.js';

function open(): void {
  const place = document.getElementById('page');
  const packed = document.getElementById('packed');
  if (place === null || packed === null) return;
  // What the script is written for came into browsers with this.
  if (!('DecompressionStream' in self)) {
    place.textContent = 'This browser is too old for this page / Este navegador es demasiado antiguo: 2023.';
    return;
  }
  const bytes = Uint8Array.from(atob(packed.textContent), (each) => each.charCodeAt(0));
  const script = document.createElement('script');
  script.id = 'leat';
  script.textContent = new TextDecoder().decode(unpack(bytes));
  document.body.append(script);
}

// Once what stands above it is painted.
setTimeout(open);
