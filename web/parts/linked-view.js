// Two photos that are zoomed and moved together. Each keeps its own centre, so that two pieces may
// be brought side by side; from then on both move alike.

const MOST = 12;
const STEP = 1.4;
const WHEEL = 0.0016;
const KEY_PX = 60;
const A_TAP_PX = 5;
const PIECE_SCALE = 3;
const MOVES = {ArrowLeft: [1, 0], ArrowRight: [-1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1]};

/** The view on a left and a right photo. changed is called when the scale changes. */
export class LinkedView {
  constructor(changed) {
    this.changed = changed;
    this.scale = 1;
    this.centres = {left: {x: 0.5, y: 0.5}, right: {x: 0.5, y: 0.5}};
    this.pointers = new Map();
    this.root = null;
    this.watch = new ResizeObserver(() => this.apply());
  }

  /** Takes over the element that holds the frames; each frame holds layers of one photo. */
  attach(root) {
    if (root !== this.root) {
      this.watch.disconnect();
      this.root = root;
      if (root) {
        this.watch.observe(root);
      }
    }
    queueMicrotask(() => this.apply());
  }

  layers() {
    return [...(this.root?.querySelectorAll(".layer") ?? [])].map((layer) => {
      const image = layer.querySelector("img");
      const frame = layer.closest(".frame").getBoundingClientRect();
      const ratio = image.naturalWidth > 0 ? image.naturalWidth / image.naturalHeight : 4 / 3;
      const width = Math.min(frame.width, frame.height * ratio);
      return {layer, image, frame, side: layer.dataset.side, width, height: width / ratio};
    });
  }

  /** Draws what was zoomed and moved. */
  apply() {
    for (const each of this.layers()) {
      const centre = this.centres[each.side];
      const width = each.width * this.scale;
      const height = each.height * this.scale;
      centre.x = bounded(centre.x, each.frame.width, width);
      centre.y = bounded(centre.y, each.frame.height, height);
      const left = each.frame.width / 2 - centre.x * width;
      const top = each.frame.height / 2 - centre.y * height;
      each.image.style.setProperty("width", `${each.width}px`);
      each.image.style.setProperty("height", `${each.height}px`);
      each.image.style.setProperty(
        "transform",
        `translate(${left}px, ${top}px) scale(${this.scale})`,
      );
      for (const mark of each.layer.querySelectorAll(".piece-letter")) {
        const x = left + mark.dataset.x * width;
        const y = top + mark.dataset.y * height;
        mark.style.setProperty("transform", `translate(${x}px, ${y}px) translate(-50%, -50%)`);
      }
    }
    this.root?.classList.toggle("zoomed", this.scale > 1);
  }

  /** Zooms about a place of the window, or about the middle. */
  zoomTo(scale, at) {
    const next = Math.min(MOST, Math.max(1, scale));
    for (const {frame, side, width, height} of this.layers()) {
      const inside = at && this.frameAt(at);
      const x = inside ? at.x - inside.left - frame.width / 2 : 0;
      const y = inside ? at.y - inside.top - frame.height / 2 : 0;
      const centre = this.centres[side];
      centre.x += x / (width * this.scale) - x / (width * next);
      centre.y += y / (height * this.scale) - y / (height * next);
    }
    this.scale = next;
    this.apply();
    this.changed();
  }

  zoomIn() {
    this.zoomTo(this.scale * STEP);
  }

  zoomOut() {
    this.zoomTo(this.scale / STEP);
  }

  whole() {
    this.centres = {left: {x: 0.5, y: 0.5}, right: {x: 0.5, y: 0.5}};
    this.zoomTo(1);
  }

  /** Brings a place of one photo into the middle, large enough to be looked at. */
  lookAt(side, {x, y}) {
    this.centres[side] = {x, y};
    this.scale = Math.max(this.scale, PIECE_SCALE);
    this.apply();
    this.changed();
    this.frameOf(side)?.scrollIntoView({block: "nearest"});
  }

  frameOf(side) {
    return this.layers().find((each) => each.side === side)?.layer.closest(".frame");
  }

  moveBy(x, y) {
    for (const {side, width, height} of this.layers()) {
      this.centres[side].x -= x / (width * this.scale);
      this.centres[side].y -= y / (height * this.scale);
    }
    this.apply();
  }

  frameAt({x, y}) {
    return [...this.root.querySelectorAll(".frame")]
      .map((each) => each.getBoundingClientRect())
      .find((box) => x >= box.left && x <= box.right && y >= box.top && y <= box.bottom);
  }

  keyed(event) {
    const direction = MOVES[event.key];
    if (event.target !== event.currentTarget || event.ctrlKey || event.metaKey || event.altKey) {
      return;
    }
    if (direction) {
      this.moveBy(direction[0] * KEY_PX, direction[1] * KEY_PX);
    } else if (event.key === "+" || event.key === "=") {
      this.zoomIn();
    } else if (event.key === "-") {
      this.zoomOut();
    } else if (event.key === "0") {
      this.whole();
    } else {
      return;
    }
    event.preventDefault();
    event.stopPropagation();
  }

  // The wheel scrolls the page until the photos have the focus; then it zooms. A pinch on a pad
  // comes as a wheel with Ctrl.
  wheeled(event) {
    if (!event.ctrlKey && !this.root.contains(document.activeElement)) {
      return;
    }
    event.preventDefault();
    const lines = event.deltaMode === 1 ? 16 : 1;
    const delta = event.deltaY * lines * (event.ctrlKey ? 4 : 1);
    this.zoomTo(this.scale * Math.exp(-delta * WHEEL), {x: event.clientX, y: event.clientY});
  }

  pressed(event) {
    if (event.button !== 0 || event.target.closest(".divider")) {
      return;
    }
    this.pointers.set(event.pointerId, {x: event.clientX, y: event.clientY, far: 0});
    event.currentTarget.setPointerCapture(event.pointerId);
  }

  dragged(event) {
    const last = this.pointers.get(event.pointerId);
    if (!last) {
      return;
    }
    const now = {x: event.clientX, y: event.clientY};
    const way = Math.hypot(now.x - last.x, now.y - last.y);
    const other = [...this.pointers].find(([id]) => id !== event.pointerId)?.[1];
    if (other) {
      const before = Math.hypot(last.x - other.x, last.y - other.y);
      const after = Math.hypot(now.x - other.x, now.y - other.y);
      if (before > 0) {
        this.zoomTo((this.scale * after) / before, {
          x: (now.x + other.x) / 2,
          y: (now.y + other.y) / 2,
        });
      }
      other.far += way;
    }
    this.moveBy((now.x - last.x) / (other ? 2 : 1), (now.y - last.y) / (other ? 2 : 1));
    this.pointers.set(event.pointerId, {...now, far: last.far + way});
  }

  released(event) {
    const last = this.pointers.get(event.pointerId);
    this.pointers.delete(event.pointerId);
    if (last && event.type === "pointerup" && last.far <= A_TAP_PX && this.scale > 1) {
      const box = this.frameAt(last);
      if (box) {
        this.moveBy(box.left + box.width / 2 - last.x, box.top + box.height / 2 - last.y);
      }
    }
  }
}

function bounded(centre, frame, size) {
  if (size <= frame) {
    return 0.5;
  }
  const margin = frame / (2 * size);
  return Math.min(1 - margin, Math.max(margin, centre));
}
