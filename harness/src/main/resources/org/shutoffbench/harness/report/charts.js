/* The curves of the report, drawn at measured width and again when it changes, never scaled. */
(function () {
  "use strict";

  const { FONT, INK, INK_2, RULE, BAND, GROUND, widthOf, signed, bare, label, text, rectangle, line, clipped, hatch } =
    chartTools;
  const data = JSON.parse(document.getElementById("charts").textContent);
  const hueOf = (look) => "var(--hue-" + look.hue + ")";

  const HALO = { fill: INK, stroke: GROUND, lineWidth: 3 };
  const nameOf = (strategy) => (strategy.settings === null ? strategy.label : strategy.name);
  function mark(look, at, size, extra) {
    return {
      type: "scatter",
      silent: true,
      symbol: "path://" + look.path,
      symbolSize: size,
      data: [at],
      itemStyle: {
        color: look.hollow || look.open ? GROUND : hueOf(look),
        borderColor: hueOf(look),
        borderWidth: 2,
        borderJoin: "round",
        opacity: 1,
      },
      z: 6,
      ...extra,
    };
  }

  /* Where a name stands that has no room beside its bar: on the bar, on the wider side of the mark. */
  const inside = (mark, wide, width) => (mark > width / 2 ? Math.max(0, mark - 12 - wide) : Math.min(width - wide - 12, mark + 12));

  /* Share of joints at or below a value, and under it one tolerance bar per strategy on the same scale. */
  function ecdf(width, panel) {
    const q = data.quantities[panel.quantity];
    const family = q.families[panel.family];
    const curves = family.curves.filter((c) => panel.shown(data.strategies[c.strategy]));
    const left = 30;
    const right = 14;
    const top = 22;
    const tall = 150;
    const row = 17;
    const barsTop = top + tall + 12;
    const height = barsTop + row * curves.length + 26;
    const toX = (value) => left + ((width - left - right) * clipped(value, 0, q.max)) / q.max;
    const graphic = [];
    if (q.target !== null) {
      graphic.push(rectangle(toX(q.low), top - 4, toX(q.high) - toX(q.low), height - top - 22, BAND));
      graphic.push(line(toX(q.target), top - 4, toX(q.target), height - 26, INK_2, [1, 3]));
      graphic.push(text((toX(q.low) + toX(q.high)) / 2, 2, "window", { textAlign: "center" }));
    }
    if (panel.family === 0) {
      graphic.push(text(left + 4, top + 4, "% of joints"));
    }
    const series = [];
    curves.forEach((curve, i) => {
      const strategy = data.strategies[curve.strategy];
      const look = strategy.look;
      series.push({
        type: "line",
        silent: true,
        showSymbol: false,
        step: curve.step ? "end" : false,
        clip: true,
        data: curve.points,
        lineStyle: { color: hueOf(look), width: 2, type: look.dash.length ? look.dash : "solid", cap: "butt" },
        z: 4,
      });
      if (curve.tolerance) {
        series.push({
          type: "line",
          silent: true,
          xAxisIndex: 1,
          yAxisIndex: 1,
          showSymbol: false,
          data: [
            [clipped(curve.tolerance[0], 0, q.max), i],
            [clipped(curve.tolerance[1], 0, q.max), i],
          ],
          lineStyle: { color: hueOf(look), width: 5, opacity: 0.45, cap: "butt" },
          z: 3,
        });
      }
      series.push(
        mark(look, [clipped(curve.median, 0, q.max), i], 10, { xAxisIndex: 1, yAxisIndex: 1 })
      );
      const low = toX(curve.tolerance ? Math.min(curve.tolerance[0], curve.median) : curve.median);
      const high = toX(curve.tolerance ? Math.max(curve.tolerance[1], curve.median) : curve.median);
      const y = barsTop + row * i + 2;
      const name = nameOf(strategy);
      const wide = widthOf(name);
      const room = low - 12 - wide > 0;
      const beside = high + 12 + wide < width;
      graphic.push(
        room
          ? text(low - 10, y, name, { fill: INK, textAlign: "right" })
          : beside
            ? text(high + 10, y, name, { fill: INK })
            : text(inside(toX(clipped(curve.median, 0, q.max)), wide, width), y, name, HALO)
      );
      if ((curve.tolerance && curve.tolerance[1] > q.max) || curve.median > q.max) {
        graphic.push(text(width - 10, y, "\u25b8"));
      }
    });
    return {
      height: height,
      option: {
        animation: false,
        textStyle: { fontFamily: FONT },
        grid: [
          { left: left, right: right, top: top, height: tall },
          { left: left, right: right, top: barsTop, height: row * curves.length },
        ],
        xAxis: [
          { type: "value", gridIndex: 0, min: 0, max: q.max, ...bare, axisLabel: { show: false } },
          {
            type: "value",
            gridIndex: 1,
            min: 0,
            max: q.max,
            ...bare,
            axisLabel: label({
              customValues: q.ticks,
              hideOverlap: false,
              alignMaxLabel: "right",
              formatter: (v) => (v === q.ticks[q.ticks.length - 1] ? v + " " + q.unit : String(v)),
            }),
          },
        ],
        yAxis: [
          {
            type: "value",
            gridIndex: 0,
            min: 0,
            max: 100,
            interval: 50,
            ...bare,
            splitLine: { show: true, lineStyle: { color: RULE } },
            axisLabel: label({ margin: 6 }),
          },
          { type: "value", gridIndex: 1, inverse: true, min: -0.5, max: curves.length - 0.5, show: false },
        ],
        graphic: graphic,
        series: series,
      },
    };
  }

  /* Joints outside the window and silent misses on a logarithmic axis; none seen is an arrow up to the upper bound. */
  function misses(width, panel) {
    const picture = data.misses[panel.family];
    const rows = picture.rows;
    const left = 8;
    const right = 16;
    const top = 6;
    const row = 50;
    const tall = row * rows.length;
    const from = Math.log10(picture.from);
    const series = [];
    const toX = (percent) =>
      left + ((width - left - right) * (clipped(Math.log10(Math.max(percent, 1e-12)), from, 2) - from)) / (2 - from);
    const graphic = [];
    for (let power = from; power <= 2; power++) {
      const x = toX(10 ** power);
      const words = power === 2 ? "100 %" : String(Number((10 ** power).toPrecision(1)));
      graphic.push(line(x, top, x, top + tall, RULE));
      graphic.push(text(x, top + tall + 6, words, { textAlign: power === 2 ? "right" : power === from ? "left" : "center" }));
    }
    rows.forEach((r, i) => {
      const look = data.strategies[r.strategy].look;
      const y = top + row * i;
      graphic.push(text(left, y + 2, data.strategies[r.strategy].label, { ...HALO, lineWidth: 4 }));
      [r.missed, r.silent].forEach((rate, k) => {
        const at = y + 25 + 14 * k;
        const colour = k === 0 ? hueOf(look) : INK_2;
        graphic.push(line(rate[0] > 0 ? toX(rate[1]) : left, at, toX(rate[2]), at, colour));
        graphic.push(line(toX(rate[2]), at - 4, toX(rate[2]), at + 4, colour));
        if (rate[0] === 0) {
          graphic.push(line(left, at, left + 5, at - 4, colour), line(left, at, left + 5, at + 4, colour));
        } else if (k === 0) {
          series.push(mark(look, [toX(rate[0]), at], 10));
        } else {
          graphic.push({
            type: "rect",
            silent: true,
            shape: { x: toX(rate[0]) - 5, y: at - 5, width: 10, height: 10 },
            style: { fill: { image: hatch, repeat: "repeat", imageWidth: 6, imageHeight: 6 }, stroke: INK, lineWidth: 1.5 },
          });
        }
      });
    });
    const height = top + tall + 24;
    return {
      height: height,
      option: {
        animation: false,
        grid: [{ left: 0, right: 0, top: 0, height: height }],
        xAxis: [{ type: "value", min: 0, max: width, show: false }],
        yAxis: [{ type: "value", min: 0, max: height, inverse: true, show: false }],
        graphic: graphic,
        series: series,
      },
    };
  }

  /* Clamping and total torque over nut angle with every strategy's stop. The way to snug can be long: it is drawn on a
   * scale of its own, left of a visible break. */
  function worstJoint(width, panel) {
    const joint = data.worst[panel.joint];
    const left = 34;
    const right = 12;
    const top = 24;
    const tall = 190;
    const height = top + tall + 40;
    const gap = 10;
    const room = width - left - right;
    const broken = joint.approach !== null;
    const nearWidth = broken ? Math.round(room * 0.58) : room;
    const farWidth = room - nearWidth - gap;
    const near = joint.near;
    const far = joint.approach;
    const nearX = (deg) => width - right - nearWidth + (nearWidth * (deg - near[0])) / (near[1] - near[0]);
    const farX = (deg) => left + (farWidth * (deg - far[0])) / (far[1] - far[0]);
    const toX = (deg) => (broken && deg < near[0] ? farX(Math.max(far[0], deg)) : nearX(clipped(deg, near[0], near[1])));
    const toY = (torque) => top + tall - (tall * clipped(torque, 0, joint.max)) / joint.max;
    const grids = broken
      ? [
          { left: left, width: farWidth, top: top, height: tall },
          { right: right, width: nearWidth, top: top, height: tall },
        ]
      : [{ left: left, right: right, top: top, height: tall }];
    const ranges = broken ? [far, near] : [near];
    const graphic = [
      rectangle(left, toY(joint.window[1]), room, toY(joint.window[0]) - toY(joint.window[1]), BAND),
      line(toX(0), top - 8, toX(0), top + tall, INK_2, [1, 3]),
      text(toX(0) - 4, 4, "snug", { textAlign: "right" }),
      text(left + 4, toY(joint.window[1]) + 3, "window"),
      text(width - right, height - 14, "nut angle past snug, deg", { textAlign: "right" }),
      text(left - 6, height - 30, joint.unit, { textAlign: "right" }),
    ];
    if (broken) {
      const x = left + farWidth;
      graphic.push(line(x - 2, top + tall + 5, x + 4, top + tall - 5, INK));
      graphic.push(line(x + gap - 4, top + tall + 5, x + gap + 2, top + tall - 5, INK));
    }
    const series = [];
    ranges.forEach((range, i) => {
      const inside = (points) => points.filter((p) => p[0] >= range[0] - 1e-9 && p[0] <= range[1] + 1e-9);
      const clamping = inside(joint.clamping);
      const total = inside(joint.total);
      const axes = { xAxisIndex: i, yAxisIndex: i, type: "line", silent: true, showSymbol: false, clip: true };
      series.push({ ...axes, data: clamping, lineStyle: { color: INK, width: 2 }, z: 4 });
      if (joint.hatched) {
        series.push({ ...axes, data: total, lineStyle: { color: INK_2, width: 1.3, type: [5, 3] }, z: 3 });
        const at = (p) => [i === 0 && broken ? farX(p[0]) : nearX(p[0]), toY(p[1])];
        graphic.push({
          type: "polygon",
          silent: true,
          z: -4,
          shape: { points: total.map(at).concat(clamping.map(at).reverse()) },
          style: { fill: { image: hatch, repeat: "repeat", imageWidth: 6, imageHeight: 6 }, stroke: "none" },
        });
      }
    });
    joint.stops.forEach((stop) => {
      const look = data.strategies[stop.strategy].look;
      const i = broken && stop.deg >= near[0] ? 1 : 0;
      const range = ranges[i];
      const at = [clipped(stop.deg, range[0], range[1]), clipped(stop.torque, 0, joint.max)];
      const axes = { xAxisIndex: i, yAxisIndex: i, clip: false };
      series.push(mark(look, at, stop.subject ? 13 : 11, { ...axes, z: stop.subject ? 8 : 6 }));
      if (stop.subject) {
        series.push({
          type: "scatter",
          silent: true,
          symbol: "circle",
          symbolSize: 26,
          data: [at],
          itemStyle: { color: "none", borderColor: INK, borderWidth: 1.5, opacity: 1 },
          z: 7,
          ...axes,
        });
      }
    });
    const over = joint.stops.filter((stop) => stop.torque > joint.max || stop.deg > near[1]);
    if (over.length) {
      const values = over.map((stop) => stop.torque).sort((a, b) => a - b);
      const least = values[0].toFixed(0);
      const most = values[values.length - 1].toFixed(0);
      const words = "\u25b4 off scale, " + (least === most ? most : least + " to " + most) + " " + joint.unit;
      const x = Math.min(...over.map((stop) => toX(stop.deg)));
      graphic.push(text(x - 20, top - 6, words, { fill: INK, textAlign: "right" }));
    }
    if (joint.free) {
      const words = "prevailing torque " + joint.free.words;
      const at = clipped(toX(joint.free.deg) - widthOf(words) / 2, left + 4, width - widthOf(words) - 4);
      graphic.push(text(at, toY(joint.free.torque) - 18, words));
    }
    return {
      height: height,
      option: {
        animation: false,
        textStyle: { fontFamily: FONT },
        grid: grids,
        xAxis: ranges.map((range, i) => ({
          type: "value",
          gridIndex: i,
          min: range[0],
          max: range[1],
          ...bare,
          axisLine: { show: true, onZero: false, lineStyle: { color: INK_2 } },
          axisLabel: label({ customValues: joint.ticks[i], formatter: signed, hideOverlap: true }),
        })),
        yAxis: ranges.map((range, i) => ({
          type: "value",
          gridIndex: i,
          min: 0,
          max: joint.max,
          ...bare,
          axisLabel: i === 0 ? label({ customValues: joint.torqueTicks }) : { show: false },
          splitLine: { show: false },
        })),
        graphic: graphic,
        series: series,
      },
    };
  }

  /* Share of silent misses by class of a drawn parameter, with the interval of each class. */
  function levels(width, panel) {
    const picture = data.levels[panel.level];
    const curves = picture.curves.filter((c) => panel.shown(data.strategies[c.strategy]));
    const left = 34;
    const top = 22;
    const tall = 190;
    const height = top + tall + 40;
    const labels = curves.map((c) => nameOf(data.strategies[c.strategy]));
    const right = Math.min(width * 0.42, 24 + Math.max(0, ...labels.map(widthOf)));
    const toY = (percent) => top + tall - (tall * percent) / 100;
    const series = [];
    const graphic = [
      text(left + 4, 2, "% silent misses"),
      text(width - right, height - 16, picture.name + ", " + picture.unit, { textAlign: "right" }),
    ];
    const ends = curves
      .map((c, i) => ({ i: i, y: toY(c.points.length ? c.points[c.points.length - 1][1] : 0) }))
      .sort((a, b) => a.y - b.y);
    const step = 15;
    ends.forEach((end, k) => {
      end.y = k === 0 ? end.y : Math.max(end.y, ends[k - 1].y + step);
    });
    const over = ends.length ? ends[ends.length - 1].y - (top + tall) : 0;
    for (let k = ends.length - 1, floor = top + tall; over > 0 && k >= 0; k--, floor -= step) {
      ends[k].y = Math.min(ends[k].y, floor);
    }
    ends.forEach((end) => graphic.push(text(width - right + 14, end.y - 6, labels[end.i], { fill: INK })));
    curves.forEach((curve, i) => {
      const look = data.strategies[curve.strategy].look;
      const shift = (i - (curves.length - 1) / 2) * 0.012 * (picture.range[1] - picture.range[0]);
      const place = (x) => x + shift;
      series.push({
        type: "line",
        silent: true,
        showSymbol: false,
        data: curve.points.map((p) => [place(p[0]), p[1]]),
        lineStyle: { color: hueOf(look), width: 1.6, type: look.dash.length ? look.dash : "solid" },
        z: 3,
      });
      curve.points.forEach((p) => {
        series.push({
          type: "line",
          silent: true,
          showSymbol: false,
          data: [
            [place(p[0]), p[2]],
            [place(p[0]), p[3]],
          ],
          lineStyle: { color: hueOf(look), width: 1.2 },
          z: 2,
        });
        series.push(mark(look, [place(p[0]), p[1]], 9));
      });
    });
    return {
      height: height,
      option: {
        animation: false,
        textStyle: { fontFamily: FONT },
        grid: [{ left: left, right: right, top: top, height: tall }],
        xAxis: [
          {
            type: "value",
            min: picture.range[0],
            max: picture.range[1],
            ...bare,
            axisLine: { show: true, lineStyle: { color: INK_2 } },
            axisLabel: label({ customValues: picture.ticks }),
          },
        ],
        yAxis: [
          {
            type: "value",
            min: 0,
            max: 100,
            interval: 50,
            ...bare,
            splitLine: { show: true, lineStyle: { color: RULE } },
            axisLabel: label({}),
          },
        ],
        graphic: graphic,
        series: series,
      },
    };
  }

  const kinds = { ecdf: ecdf, misses: misses, worst: worstJoint, levels: levels };
  const live = [];

  function describe(place) {
    const svg = place.querySelector("svg");
    if (svg) {
      svg.setAttribute("role", "img");
      svg.setAttribute("viewBox", "0 0 " + svg.getAttribute("width") + " " + svg.getAttribute("height"));
      svg.setAttribute("aria-labelledby", place.dataset.title);
      svg.setAttribute("aria-describedby", place.dataset.values);
    }
  }

  function draw(chart) {
    const width = chart.place.clientWidth;
    if (width === 0) {
      return;
    }
    const picture = chart.kind(width, chart.panel);
    chart.place.style.height = picture.height + "px";
    if (!chart.drawing) {
      chart.drawing = echarts.init(chart.place, null, { renderer: "svg", width: width, height: picture.height });
    } else {
      chart.drawing.resize({ width: width, height: picture.height, silent: true });
    }
    chart.drawing.setOption(picture.option, { notMerge: true });
    chart.drawing.getZr().flush();
    chart.width = width;
    describe(chart.place);
    chart.place.dataset.drawn = "true";
  }

  function chosen(name) {
    const input = document.querySelector("input[name='" + name + "']:checked");
    return input ? input.value : null;
  }

  const shown = (strategy) => strategy.settings === null || strategy.settings.includes(chosen("settings"));

  document.querySelectorAll(".chart").forEach((place) => {
    const panel = { shown: shown, quantity: 0 };
    ["family", "joint", "level"].forEach((key) => {
      if (place.dataset[key] !== undefined) {
        panel[key] = Number(place.dataset[key]);
      }
    });
    const chart = { place: place, kind: kinds[place.dataset.kind], panel: panel };
    live.push(chart);
    draw(chart);
  });

  function again() {
    const quantity = chosen("quantity");
    live.forEach((chart) => {
      if (quantity !== null) {
        chart.panel.quantity = Number(quantity);
      }
      draw(chart);
    });
    document.querySelectorAll("[data-quantity]").forEach((element) => {
      element.hidden = quantity !== null && element.dataset.quantity !== quantity;
    });
  }

  document.querySelectorAll(".switch input").forEach((input) => input.addEventListener("change", again));

  const watch = new ResizeObserver(() => {
    live.filter((chart) => chart.place.clientWidth !== chart.width).forEach(draw);
  });
  live.forEach((chart) => watch.observe(chart.place));

  const opened = [];
  window.addEventListener("beforeprint", () => {
    document.querySelectorAll("details:not([open])").forEach((element) => {
      element.open = true;
      opened.push(element);
    });
    document.documentElement.classList.add("paper");
    live.forEach(draw);
  });
  window.addEventListener("afterprint", () => {
    document.documentElement.classList.remove("paper");
    opened.splice(0).forEach((element) => (element.open = false));
    live.forEach(draw);
  });
})();
