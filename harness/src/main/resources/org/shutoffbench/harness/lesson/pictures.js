/* The pictures of the lesson. Each draws a state; nothing here knows steps or engines. */
const pictures = (function () {
  "use strict";

  const { FONT, INK, INK_2, RULE, BAND, GROUND, signed, bare, label, text, rectangle, line, clipped, hatch } = chartTools;
  const CLAMPING = "var(--hue-0)";
  const INSERT = "var(--hue-1)";
  const TALL = window.innerWidth >= 1500 ? 260 : 196;
  const charts = new Map();

  /** Draws or draws again, at the width the place has now. */
  function draw(place, picture) {
    const width = place.clientWidth;
    if (width === 0) {
      return;
    }
    const { height, option } = picture(width);
    place.style.height = height + "px";
    let chart = charts.get(place);
    if (!chart) {
      chart = { drawing: echarts.init(place, null, { renderer: "svg", width: width, height: height }) };
      charts.set(place, chart);
    } else {
      chart.drawing.resize({ width: width, height: height, silent: true });
    }
    chart.picture = picture;
    chart.width = width;
    chart.drawing.setOption(
      { animation: false, textStyle: { fontFamily: FONT }, ...option },
      { notMerge: true }
    );
    chart.drawing.getZr().flush();
    const svg = place.querySelector("svg");
    const name = place.id.replace("p-", "");
    svg.setAttribute("role", "img");
    svg.setAttribute("aria-labelledby", "t-" + name);
    svg.setAttribute("aria-describedby", "v-" + name);
    place.dataset.drawn = "true";
  }

  window.addEventListener("resize", () => {
    charts.forEach((chart, place) => {
      if (place.clientWidth !== chart.width) {
        draw(place, chart.picture);
      }
    });
  });

  /* Bolt, nut, insert and plates. The gap is drawn at one scale from 0 to 2 turns. */
  function section(insert, turnsToGo, forceKn) {
    const gap = Math.round(34 * Math.min(2, Math.max(0, turnsToGo)));
    const bottom = 168 - gap;
    const nut = bottom - 40;
    const pressed = forceKn > 0;
    const arrow = (y1, y2) =>
      `<path d="M24,${y1}V${y2}M24,${y2}l-5,${y1 < y2 ? -7 : 7}M24,${y2}l5,${y1 < y2 ? -7 : 7}" stroke="${INK}" fill="none" stroke-width="2"/>`;
    const values =
      (insert ? "Lock nut with an insert. " : "Plain nut. ") +
      (turnsToGo > 0
        ? "The nut is " + turnsToGo.toFixed(2) + " turns from the joint; the plates are not squeezed."
        : "The nut bears on the joint; clamp force " + forceKn.toFixed(1) + " kN.");
    return (
      `<svg viewBox="0 0 176 262" role="img" aria-labelledby="t-section d-section"><desc id="d-section">${values}</desc>` +
      `<defs><pattern id="thread" width="8" height="7" patternUnits="userSpaceOnUse"><path d="M0,1L8,5" stroke="${INK}" stroke-width="1"/></pattern>` +
      `<pattern id="rub" width="6" height="6" patternUnits="userSpaceOnUse"><path d="M-1,7L7,-1" stroke="${INSERT}" stroke-width="1.6"/></pattern></defs>` +
      `<rect x="6" y="168" width="152" height="36" fill="${BAND}" stroke="${INK_2}"/><rect x="6" y="204" width="152" height="36" fill="${BAND}" stroke="${INK_2}"/>` +
      `<rect x="70" y="20" width="24" height="222" fill="${GROUND}" stroke="${INK}" stroke-width="1.5"/><rect x="70" y="20" width="24" height="118" fill="url(#thread)"/>` +
      `<rect x="46" y="240" width="72" height="20" fill="${GROUND}" stroke="${INK}" stroke-width="1.5"/>` +
      `<g class="nut"><rect x="40" y="${nut}" width="30" height="40" fill="${GROUND}" stroke="${INK}" stroke-width="2"/><rect x="94" y="${nut}" width="30" height="40" fill="${GROUND}" stroke="${INK}" stroke-width="2"/>` +
      (insert
        ? `<rect x="57" y="${nut}" width="13" height="11" fill="url(#rub)" stroke="${INSERT}"/><rect x="94" y="${nut}" width="13" height="11" fill="url(#rub)" stroke="${INSERT}"/><text x="130" y="${nut + 11}" font-size="13" fill="${INK_2}">insert</text>`
        : "") +
      `</g>` +
      (gap > 3
        ? `<path d="M30,${bottom}H36M30,168H36M33,${bottom}V168" stroke="${INK}" fill="none"/><text x="4" y="${(bottom + 172) / 2}" font-size="13" fill="${INK_2}">gap</text>`
        : "") +
      (pressed ? arrow(146, 166) + arrow(262, 242) : "") +
      `</svg><p class="kicker">${pressed ? "squeezed: " + forceKn.toFixed(1) + " kN" : "not squeezed"}</p>`
    );
  }

  /* Torque over nut angle: the long way to snug on a scale of its own, left of a visible break. */
  function torque(joint, frames) {
    return (width) => {
      const left = 34;
      const right = 8;
      const top = 22;
      const tall = TALL;
      const gap = 10;
      const most = 120;
      const height = top + tall + 40;
      const near = [-40, joint.clamping[joint.clamping.length - 1][0]];
      const far = [joint.clamping[0][0], near[0]];
      const room = width - left - right - gap;
      const farWidth = Math.round(room * 0.46);
      const nearWidth = room - farWidth;
      const nearLeft = left + farWidth + gap;
      const toX = (deg) =>
        deg < near[0]
          ? left + (farWidth * (Math.max(deg, far[0]) - far[0])) / (far[1] - far[0])
          : nearLeft + (nearWidth * (Math.min(deg, near[1]) - near[0])) / (near[1] - near[0]);
      const toY = (nm) => top + tall - (tall * clipped(nm, 0, most)) / most;
      const hatched = joint.knobs.prevailingNm > 0;
      const graphic = [
        rectangle(left, toY(joint.windowNm[1]), width - left - right, toY(joint.windowNm[0]) - toY(joint.windowNm[1]), BAND),
        text(left + 4, toY(joint.windowNm[1]) + 3, "window"),
        line(toX(0), top - 8, toX(0), top + tall, INK_2, [1, 3]),
        text(toX(0) - 4, 4, "nut touches joint", { textAlign: "right" }),
        line(left + farWidth - 2, top + tall + 5, left + farWidth + 4, top + tall - 5, INK),
        line(nearLeft - 4, top + tall + 5, nearLeft + 2, top + tall - 5, INK),
        text(width - right, height - 14, "deg past the joint", { textAlign: "right" }),
      ];
      if (hatched) {
        graphic.push(text(left + 6, toY(joint.knobs.prevailingNm) - 20, "insert: torque, no clamp force"));
        graphic.push({
          type: "polygon",
          silent: true,
          z: -4,
          shape: {
            points: joint.total
              .map((p) => [toX(p[0]), toY(p[1])])
              .concat(joint.clamping.map((p) => [toX(p[0]), toY(p[1])]).reverse()),
          },
          style: { fill: { image: hatch, repeat: "repeat", imageWidth: 6, imageHeight: 6 }, stroke: "none" },
        });
      }
      frames.slice(1).forEach((frame) => {
        const last = frame === frames[frames.length - 1];
        graphic.push(line(toX(frame.pastSnugDeg), top + tall + 2, toX(frame.pastSnugDeg), top + tall + (last ? 14 : 9), INK));
      });
      const at = frames[frames.length - 1];
      graphic.push({
        type: "circle",
        silent: true,
        z: 20,
        shape: { cx: toX(at.pastSnugDeg), cy: toY(at.resistNm), r: 8 },
        style: { fill: GROUND, stroke: INK, lineWidth: 2.5 },
      });
      const ranges = [far, near];
      const series = [];
      ranges.forEach((range, i) => {
        const inside = (points) => points.filter((p) => (i === 0 ? p[0] <= near[0] + 3 : p[0] >= near[0] - 3));
        const axes = { type: "line", silent: true, showSymbol: false, clip: true, xAxisIndex: i, yAxisIndex: i };
        series.push({ ...axes, data: inside(joint.clamping), lineStyle: { color: CLAMPING, width: 3 }, z: 5 });
        if (hatched) {
          series.push({ ...axes, data: inside(joint.total), lineStyle: { color: INSERT, width: 2, type: [5, 3] }, z: 4 });
        }
      });
      const axis = { ...bare, axisLine: { show: true, onZero: false, lineStyle: { color: INK_2 } } };
      return {
        height: height,
        option: {
          grid: [
            { left: left, width: farWidth, top: top, height: tall },
            { left: nearLeft, width: nearWidth, top: top, height: tall },
          ],
          xAxis: ranges.map((range, i) => ({
            type: "value",
            gridIndex: i,
            min: range[0],
            max: range[1],
            ...axis,
            axisLabel: label({
              margin: 14,
              customValues: i === 0 ? [-360, -180] : near[1] > 100 ? [0, 90] : [0, 30],
              formatter: signed,
            }),
          })),
          yAxis: ranges.map((range, i) => ({
            type: "value",
            gridIndex: i,
            min: 0,
            max: most,
            ...bare,
            axisLabel: i === 0 ? label({ customValues: [0, 40, 84, 120] }) : { show: false },
          })),
          graphic: graphic,
          series: series,
        },
      };
    };
  }

  /* Clamp force after each blow, with the bench joint, the set count and what the class expects. */
  function force(view) {
    return (width) => {
      const left = 30;
      const right = 14;
      const top = 22;
      const tall = TALL;
      const height = top + tall + 40;
      const blows = Math.max(12, view.count + 5, view.frames.length + 1);
      const highest = Math.max(...view.frames.concat(view.bench || []).map((f) => f.clampForceKn), view.window[1]);
      const most = highest > 55 ? Math.ceil(highest / 20) * 20 : 60;
      const toX = (blow) => left + ((width - left - right) * blow) / blows;
      const toY = (kn) => top + tall - (tall * clipped(kn, 0, most)) / most;
      const graphic = [
        rectangle(left, toY(view.window[1]), width - left - right, toY(view.window[0]) - toY(view.window[1]), BAND),
        text(width - right, toY(view.window[1]) - 15, "window", { textAlign: "right" }),
        text(width - right, height - 14, "blows", { textAlign: "right" }),
      ];
      const steps = (frames) => {
        const points = [];
        frames.forEach((f, i) => {
          if (i > 0) {
            points.push([f.blow, frames[i - 1].clampForceKn]);
          }
          points.push([f.blow, f.clampForceKn]);
        });
        return points;
      };
      const series = [];
      if (view.bench) {
        series.push({
          type: "line",
          silent: true,
          showSymbol: false,
          data: steps(view.bench),
          lineStyle: { color: INK_2, width: 1.8, type: [2, 3] },
          z: 3,
        });
        const end = view.bench[view.bench.length - 1];
        graphic.push(text(toX(end.blow) - 44, toY(end.clampForceKn * 0.45), "bench joint", { textAlign: "center" }));
      }
      series.push({
        type: "line",
        silent: true,
        showSymbol: false,
        data: steps(view.frames),
        lineStyle: { color: CLAMPING, width: 3.5 },
        z: 5,
      });
      if (view.count > 0) {
        graphic.push(line(toX(view.count), top - 2, toX(view.count), top + tall, INK));
        graphic.push(text(toX(view.count) - 6, 4, "count set: " + view.count, { fill: INK, textAlign: "right" }));
      }
      const at = view.frames[view.frames.length - 1];
      graphic.push({
        type: "circle",
        silent: true,
        z: 20,
        shape: { cx: toX(at.blow), cy: toY(at.clampForceKn), r: 7 },
        style: { fill: CLAMPING, stroke: GROUND, lineWidth: 2 },
      });
      if (at.blow > 0) {
        const right = toX(at.blow) + 90 > width;
        graphic.push(
          text(toX(at.blow) + (right ? -12 : 12), toY(at.clampForceKn) - 16, at.clampForceKn.toFixed(1) + " kN", {
            fill: INK,
            textAlign: right ? "right" : "left",
          })
        );
      }
      if (view.predictedKn !== null && view.count > 0) {
        const x = toX(view.count);
        const y = toY(view.predictedKn);
        graphic.push({
          type: "polygon",
          silent: true,
          z: 15,
          shape: { points: [[x, y - 9], [x + 9, y], [x, y + 9], [x - 9, y]] },
          style: { fill: GROUND, stroke: "var(--hue-4)", lineWidth: 2.5 },
        });
        graphic.push(text(x + 14, y - 6, "predicted", { fill: INK }));
      }
      return {
        height: height,
        option: {
          grid: [{ left: left, right: right, top: top, height: tall }],
          xAxis: [
            {
              type: "value",
              min: 0,
              max: blows,
              ...bare,
              axisLine: { show: true, onZero: false, lineStyle: { color: INK_2 } },
              axisLabel: label({ customValues: Array.from({ length: 1 + Math.floor(blows / (blows > 20 ? 5 : 2)) }, (_, i) => i * (blows > 20 ? 5 : 2)) }),
            },
          ],
          yAxis: [
            {
              type: "value",
              min: 0,
              max: most,
              interval: 20,
              ...bare,
              splitLine: { show: true, lineStyle: { color: RULE } },
              axisLabel: label({}),
            },
          ],
          graphic: graphic,
          series: series,
        },
      };
    };
  }

  /* One bar per blow, its height the hammer's energy, split into what it did. */
  function ledger(place, frames) {
    const shown = frames.slice(1).slice(-16);
    const most = Math.max(5, ...shown.map((f) => f.energyJ));
    place.replaceChildren(
      ...shown.map((f) => {
        const one = document.createElement("div");
        one.className = f.spinUp ? "one spin" : "one";
        const part = (kind, joules) => {
          const div = document.createElement("div");
          div.className = kind;
          div.style.height = (92 * joules) / most + "%";
          if ((92 * joules) / most >= 0.8) {
            one.append(div);
          }
        };
        if (f.spinUp) {
          part("", f.energyJ);
        } else {
          part("lost", f.energyJ - f.insertJ - f.clampingJ);
          part("clamping", f.clampingJ);
          part("insert", f.insertJ);
        }
        one.append(String(f.blow));
        return one;
      })
    );
  }

  /* Thirty joints as dots over clamp force. */
  function repeats(joints, window) {
    return (width) => {
      const left = 12;
      const right = 20;
      const floor = 300;
      const height = floor + 44;
      const pitch = width > 600 ? 18 : 12;
      const most = 60;
      const toX = (kn) => left + ((width - left - right) * clipped(kn, 0, most)) / most;
      const bins = new Map();
      const graphic = [
        rectangle(toX(window[0]), 10, toX(window[1]) - toX(window[0]), floor - 10, BAND),
        text((toX(window[0]) + toX(window[1])) / 2, 14, "window", { textAlign: "center" }),
        line(left, floor, width - right, floor, INK_2),
        text(width - right, floor + 24, "clamp force, kN", { textAlign: "right" }),
      ];
      [0, 20, 40, 60].forEach((kn) => graphic.push(text(toX(kn), floor + 6, String(kn), { textAlign: "center" })));
      joints.forEach((joint) => {
        const x = Math.round(toX(joint.clampForceKn) / pitch) * pitch;
        const level = bins.get(x) || 0;
        bins.set(x, level + 1);
        graphic.push({
          type: "circle",
          silent: true,
          z: 10,
          shape: { cx: x, cy: floor - pitch / 2 - 2 - (pitch + 1) * level, r: pitch / 2 - 1.5 },
          style: { fill: joint.inWindow ? CLAMPING : GROUND, stroke: joint.inWindow ? CLAMPING : INK, lineWidth: 2 },
        });
      });
      return {
        height: height,
        option: {
          grid: [{ left: left, right: right, top: 10, height: floor - 10 }],
          xAxis: [{ type: "value", min: 0, max: most, show: false }],
          yAxis: [{ type: "value", min: 0, max: 1, show: false }],
          graphic: graphic,
          series: [],
        },
      };
    };
  }

  return { draw, section, torque, force, ledger, repeats };
})();
