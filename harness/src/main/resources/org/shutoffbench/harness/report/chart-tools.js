/*
 * What every picture of the bench is made of. Colours are the page's own custom properties, so a chart follows light, dark
 * and print without being drawn again.
 */
const chartTools = (function () {
  "use strict";

  const FONT = "system-ui, -apple-system, 'Segoe UI', Roboto, 'Noto Sans', 'DejaVu Sans', sans-serif";
  const SIZE = Number(getComputedStyle(document.documentElement).getPropertyValue("--chart-text")) || 12;
  const INK = "var(--ink)";
  const INK_2 = "var(--ink-2)";
  const RULE = "var(--rule)";
  const BAND = "var(--band)";
  const GROUND = "var(--ground)";
  const MINUS = "\u2212";

  const pencil = document.createElement("canvas").getContext("2d");
  pencil.font = SIZE + "px " + FONT;
  const widthOf = (text) => pencil.measureText(text).width;
  const signed = (value) => String(value).replace("-", MINUS);
  const bare = { axisLine: { show: false }, axisTick: { show: false }, splitLine: { show: false } };
  const label = (extra) => ({ color: INK_2, fontFamily: FONT, fontSize: SIZE, ...extra });
  const text = (x, y, content, extra) => ({
    type: "text",
    silent: true,
    x: x,
    y: y,
    style: { text: content, fill: INK_2, font: SIZE + "px " + FONT, ...extra },
  });
  const rectangle = (x, y, width, height, fill) => ({
    type: "rect",
    silent: true,
    z: -10,
    shape: { x: x, y: y, width: Math.max(0, width), height: height },
    style: { fill: fill },
  });
  const line = (x1, y1, x2, y2, stroke, dash) => ({
    type: "line",
    silent: true,
    z: -5,
    shape: { x1: x1, y1: y1, x2: x2, y2: y2 },
    style: { stroke: stroke, lineWidth: 1, lineDash: dash },
  });
  const clipped = (value, low, high) => Math.min(high, Math.max(low, value));

  const hatch =
    "data:image/svg+xml," +
    encodeURIComponent(
      "<svg xmlns='http://www.w3.org/2000/svg' width='6' height='6'>" +
        "<path d='M-1 7L7 -1M-1 1L1 -1M5 7L7 5' stroke='#7d858d' stroke-width='0.9'/></svg>"
    );

  return {
    FONT,
    SIZE,
    INK,
    INK_2,
    RULE,
    BAND,
    GROUND,
    MINUS,
    widthOf,
    signed,
    bare,
    label,
    text,
    rectangle,
    line,
    clipped,
    hatch,
  };
})();
