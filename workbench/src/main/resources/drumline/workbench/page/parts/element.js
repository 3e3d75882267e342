import {LitElement} from 'lit';

/** Ground of the page's own elements: drawn into the page itself, so that one style serves all. */
export class PageElement extends LitElement {
  createRenderRoot() {
    return this;
  }

  /** Listens as long as the element stands in the page. */
  whileShown(target, name, handler) {
    this.listening ??= [];
    this.listening.push([target, name, handler]);
    target.addEventListener(name, handler);
  }

  disconnectedCallback() {
    super.disconnectedCallback();
    for (const [target, name, handler] of this.listening ?? []) target.removeEventListener(name, handler);
    this.listening = [];
  }
}
