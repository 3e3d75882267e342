// The half-section: what is chosen stands out, what is pointed at can be chosen.
import {html} from 'lit';
import {PageElement} from '../parts/element.js';
import {drawing} from '../parts/states.js';

class PartDrawing extends PageElement {
  static properties = {svg: {attribute: false}, selected: {attribute: false}};

  constructor() {
    super();
    this.svg = null;
    this.selected = null;
  }

  updated() {
    const svg = this.querySelector('svg');
    const lit = this.selected === null ? [] : [...this.querySelectorAll('[data-element]')].filter(node => node.dataset.element === this.selected);
    svg?.classList.toggle('has-lit', lit.length > 0);
    for (const node of this.querySelectorAll('.lit')) node.classList.remove('lit');
    for (const node of lit) node.classList.add('lit');
  }

  choose(event) {
    const element = event.target.closest?.('[data-element]');
    if (element) this.dispatchEvent(new CustomEvent('select-element', {detail: element.dataset.element}));
  }

  render() {
    return html`<div class="part-drawing" @click=${this.choose}>${drawing(this.svg)}</div>`;
  }
}

customElements.define('part-drawing', PartDrawing);
