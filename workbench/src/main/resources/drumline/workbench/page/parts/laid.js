// Places and sizes set on the element itself: a strict content security policy refuses style attributes.
import {nothing} from 'lit';
import {Directive, directive} from 'lit/directive.js';

class Laid extends Directive {
  update(part, [values]) {
    this.before ??= {};
    for (const name of Object.keys(this.before)) {
      if (!(name in values)) part.element.style.removeProperty(name);
    }
    for (const [name, value] of Object.entries(values)) {
      if (this.before[name] !== value) part.element.style.setProperty(name, value);
    }
    this.before = values;
    return nothing;
  }

  render() {
    return nothing;
  }
}

/** Sets CSS properties of the element that carries it: <div ${laid({top: '4px'})}>. */
export const laid = directive(Laid);
