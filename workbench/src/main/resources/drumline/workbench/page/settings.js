// What a person set for this browser: units, light or dark, and whether the first steps were put away.

const KEY = 'drumline.';

function read(name, allowed, otherwise) {
  try {
    const value = localStorage.getItem(KEY + name);
    return allowed.includes(value) ? value : otherwise;
  } catch {
    return otherwise;
  }
}

class Settings extends EventTarget {
  constructor() {
    super();
    this.units = read('units', ['metric', 'inch'], 'metric');
    this.theme = read('theme', ['light', 'dark', 'system'], 'system');
    this.firstSteps = read('first-steps', ['shown', 'put-away'], 'shown');
    this.#show();
    window.addEventListener('storage', event => event.key?.startsWith(KEY) && this.#takeOver());
  }

  /** Sets one of units, theme, firstSteps and remembers it. */
  set(name, value) {
    this[name] = value;
    try {
      localStorage.setItem(KEY + (name === 'firstSteps' ? 'first-steps' : name), value);
    } catch {
      // A browser that keeps nothing still works; the setting lasts as long as the page.
    }
    this.#show();
    this.dispatchEvent(new CustomEvent('changed', {detail: {name}}));
  }

  #takeOver() {
    this.units = read('units', ['metric', 'inch'], 'metric');
    this.theme = read('theme', ['light', 'dark', 'system'], 'system');
    this.#show();
    this.dispatchEvent(new CustomEvent('changed', {detail: {name: 'all'}}));
  }

  #show() {
    document.documentElement.dataset.theme = this.theme;
    document.documentElement.dataset.units = this.units;
  }
}

export const settings = new Settings();
