/** A drawing made by the library, which is text of our own, in the form. */
import type { VNode } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { view } from './view.js';

function Drawing({ svg }: { svg: string }): VNode {
  const place = useRef<HTMLDivElement>(null);
  useLayoutEffect(() => {
    const drawn = new DOMParser().parseFromString(svg, 'text/html').querySelector('svg');
    place.current?.replaceChildren(...(drawn ? [drawn] : []));
  }, [svg]);
  return view`<div class="drawing" ref=${place}></div>`;
}

/** A drawing under its title; without one where something above it says what it is. */
export function figureHolder(title: string, svg: string): VNode {
  return view`<figure>${title ? view`<figcaption>${title}</figcaption>` : null}<${Drawing} svg=${svg} /></figure>`;
}
