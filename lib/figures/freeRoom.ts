import { textWidth } from './layout.js';

/** A rectangle on a figure, pixels. */
interface Box {
  left: number;
  right: number;
  top: number;
  bottom: number;
}

/** Keeps account of where labels stand, so that the next one finds free room. */
export class FreeRoom {
  private readonly taken: Box[] = [];

  /**
   * @param frame - all labels must stay inside, pixels
   */
  constructor(private readonly frame: Box) {}

  /**
   * The first place at which a label is free, which it takes.
   * @param places - middles of the label, pixels
   * @returns its index; undefined where none is free
   */
  take(text: string, size: number, places: { x: number; y: number }[]): number | undefined {
    const [width, height] = [textWidth(text, size) + 4, 1.25 * size];
    const { frame } = this;
    const at = places.findIndex(({ x, y }) => {
      const box = { left: x - width / 2, right: x + width / 2, top: y - height / 2, bottom: y + height / 2 };
      const inside =
        box.left >= frame.left &&
        box.right <= frame.right &&
        box.top >= frame.top &&
        box.bottom <= frame.bottom;
      const free = this.taken.every(
        (o) => box.left >= o.right || box.right <= o.left || box.top >= o.bottom || box.bottom <= o.top,
      );
      if (inside && free) this.taken.push(box);
      return inside && free;
    });
    return at < 0 ? undefined : at;
  }
}
