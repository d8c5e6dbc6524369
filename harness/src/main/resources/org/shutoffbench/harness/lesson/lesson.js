/* The six steps. State lives here; pictures draw it, an engine fills it. Everything is updated in place. */
(function () {
  "use strict";

  const setup = JSON.parse(document.getElementById("setup").textContent);
  const el = (id) => document.getElementById(id);
  const quiet = window.matchMedia("(prefers-reduced-motion: reduce)");
  const engine = (setup.token === null ? tableEngine : liveEngine)(setup, hear);

  const ANSWERS = [
    { id: "same", title: "About the same", kn: (bench) => bench, is: (r) => r >= 0.85 && r <= 1.15 },
    { id: "less", title: "Somewhat less", kn: (bench) => 0.6 * bench, is: (r) => r >= 0.15 && r < 0.85 },
    { id: "nothing", title: "Almost nothing", kn: () => 0, is: (r) => r < 0.15 },
    { id: "more", title: "More", kn: (bench) => 1.3 * bench, is: (r) => r > 1.15 },
  ];

  const state = {
    step: 1,
    unlocked: 1,
    joint: null,
    frames: [],
    done: false,
    stopped: false,
    starting: false,
    playing: false,
    gone: false,
    knobs: { ...setup.bench },
    hands: ANSWERS.map(() => 0),
    votes: setup.strategies.map(() => 0),
    count: 0,
    benchFrames: null,
    benchKn: 0,
    lockFrames: null,
    lockCount: 0,
    hard: null,
    repeats: null,
    races: {},
    racing: false,
    waitingFor: null,
  };

  const number = (value, digits) => value.toFixed(digits).replace("-", "\u2212");
  const make = (tag, fields, ...children) => {
    const node = document.createElement(tag);
    Object.entries(fields || {}).forEach(([key, value]) => {
      if (key.startsWith("on")) {
        node.addEventListener(key.slice(2), value);
      } else if (key in node && typeof value !== "string") {
        node[key] = value;
      } else {
        node.setAttribute(key, value);
      }
    });
    node.append(...children);
    return node;
  };
  const plural = (n, word) => n + " " + word + (n === 1 ? "" : "s");
  const paragraph = (...parts) => make("p", {}, ...parts);
  const finding = (title, ...parts) => make("div", { class: "finding" }, make("b", {}, title), ...parts);
  const strong = (text) => make("b", {}, text);
  const last = () => state.frames[state.frames.length - 1];
  const handsUp = () => state.hands.reduce((a, b) => a + b, 0);
  const inWindow = () => state.joint && within(last().clampForceKn, state.joint.windowKn);
  const within = (value, range) => value >= range[0] && value <= range[1];

  /* ---- what the engine says ---- */

  function hear(name, message) {
    const tell = {
      Joint() {
        state.joint = message;
        state.knobs = { ...message.knobs };
      },
      Frames() {
        state.starting = false;
        state.frames = message.frames;
        state.done = message.done;
        state.stopped = message.stopped;
        settled();
      },
      Frame() {
        state.frames = state.frames.concat([message.frame]);
        state.done = message.done;
        state.stopped = message.stopped;
        announce();
        settled();
      },
      Playing() {
        state.playing = message.playing;
      },
      Repeats() {
        state.repeats = message;
        say(message.repeats.filter((r) => r.inWindow).length + " of " + message.repeats.length + " joints in the window.");
      },
      Race() {
        state.races[message.progress.family] = message.progress;
        state.racing = message.progress.done < message.progress.of;
      },
      Refused() {
        state.racing = false;
        el("status").textContent = "The bench did not do that.";
      },
      Gone() {
        state.gone = true;
        state.playing = false;
        state.racing = false;
        const at = state.frames.length > 0 ? " at blow " + last().blow : "";
        el("gone").textContent = "The bench stopped answering" + at + ". Nothing more is simulated; start it again and reload this page.";
        el("gone").hidden = false;
      },
    };
    tell[name]();
    if (name !== "Joint") {
      render();
    }
  }

  /* What a step wants to remember once its joint has come to rest. */
  function settled() {
    if (state.waitingFor === "hard" && state.stopped) {
      state.hard = { count: state.lockCount, kn: last().clampForceKn, high: last().clampForceKn > state.joint.windowKn[1] };
      state.waitingFor = null;
    }
    if (state.step === 4 && state.done) {
      state.lockFrames = state.frames;
    }
  }

  function say(text) {
    el("live").textContent = text;
  }

  function announce() {
    const f = last();
    say(
      "Blow " + f.blow + ": clamp force " + number(f.clampForceKn, 1) + " kilonewtons, " +
        (f.pastSnugDeg < 0 ? number(-f.pastSnugDeg / 360, 2) + " turns to the joint." : number(f.pastSnugDeg, 0) + " degrees past the joint.") +
        (state.done ? " The tool says done." : "")
    );
  }

  /* ---- steps ---- */

  const choose = (counts, i, by) => () => {
    counts[i] = Math.min(99, Math.max(0, counts[i] + by));
    render();
  };

  /* Rows with a hand count; buttons stay the same nodes so that focus stays. */
  function handTable(id, titles, counts, caption) {
    const rows = titles.map((title, i) =>
      make(
        "tr",
        {},
        make("th", { scope: "row" }, title),
        make(
          "td",
          {},
          make("button", { type: "button", class: "small", "aria-label": "one hand less for " + title, onclick: choose(counts, i, -1) }, "\u2212"),
          make("output", { id: id + "-" + i, "aria-label": "hands for " + title }, String(counts[i])),
          make("button", { type: "button", class: "small", "aria-label": "one hand more for " + title, onclick: choose(counts, i, 1) }, "+")
        )
      )
    );
    return make("table", { class: "hands" }, make("caption", { class: "hidden" }, caption), make("tbody", {}, ...rows));
  }

  function tally() {
    const most = Math.max(1, ...state.hands);
    const truth = truthOf();
    return make(
      "table",
      { class: "hands" },
      make("caption", { class: "hidden" }, "What the class said"),
      make(
        "tbody",
        {},
        ...ANSWERS.map((answer, i) =>
          make(
            "tr",
            { class: answer === truth ? "truth" : "" },
            make("th", { scope: "row" }, (answer === truth ? "\u25b8 " : "") + answer.title),
            make("td", {}, make("span", { class: "bar", style: "width:" + (80 * state.hands[i]) / most + "px" }), " " + state.hands[i])
          )
        )
      )
    );
  }

  function truthOf() {
    const ratio = state.lockFrames === null ? NaN : state.lockFrames[state.lockFrames.length - 1].clampForceKn / state.benchKn;
    return ANSWERS.find((answer) => answer.is(ratio)) || null;
  }

  function predictedKn() {
    if (state.step !== 4 || handsUp() === 0) {
      return null;
    }
    return ANSWERS[state.hands.indexOf(Math.max(...state.hands))].kn(state.benchKn);
  }

  function start(knobs, count, blows) {
    state.starting = true;
    engine.ask("START", { knobs: knobs, count: count, blows: blows });
  }

  const STEPS = [
    {
      title: "Predict",
      enter() {},
      tell: () => [
        paragraph("A crew sets its impact tool on a bench joint: so many blows, and the clamp force is right. Every time."),
        paragraph("Then the same joint gets a lock nut. An insert in the nut grips the thread, so that it cannot shake loose."),
        paragraph(strong("Same tool, same number of blows. What clamp force is on the lock nut?"), " Count the hands. Nothing is shown yet."),
        handTable("hands", ANSWERS.map((a) => a.title), state.hands, "Hands for each answer"),
      ],
      next: () => ["Next: set the count", handsUp() > 0],
    },
    {
      title: "Set the count",
      enter() {
        start(setup.bench, 0, 0);
      },
      tell: () => [
        paragraph("The bench joint: hard, plain nut, full battery. It needs a clamp force in the window."),
        paragraph("Strike until it holds, then set the count. The first blow (dashed) falls while the tool spins up; the motor does its work."),
        make("p", {}, make("button", { type: "button", id: "set", disabled: state.frames.length < 2, onclick: setCount }, state.frames.length > 1 ? "Set the count to " + last().blow : "Set the count")),
        ...(state.count > 0
          ? [
              finding(
                state.count + " blows, " + number(state.benchKn, 1) + " kN",
                within(state.benchKn, state.joint.windowKn) ? "In the window: the crew trusts this count." : "Not in the window. Start again and find a better count."
              ),
            ]
          : []),
      ],
      next: () => ["Next: repeat it", state.count > 0 && state.benchFrames !== null],
    },
    {
      title: "Repeat it",
      enter() {
        if (state.repeats === null || state.repeats.count !== state.count) {
          state.repeats = null;
          engine.ask("REPEAT", { count: state.count });
        }
      },
      tell() {
        const parts = [
          paragraph("The same " + state.count + " blows on " + setup.repeats + " joints of the same kind: friction, stiffness and battery scatter as they do in a delivery."),
        ];
        if (state.repeats !== null) {
          const good = state.repeats.repeats.filter((r) => r.inWindow).length;
          const forces = state.repeats.repeats.map((r) => r.clampForceKn);
          parts.push(
            finding(
              good + " of " + forces.length + " in the window",
              "Clamp force from " + number(Math.min(...forces), 1) + " to " + number(Math.max(...forces), 1) + " kN. " +
                (good >= 0.9 * forces.length ? "Counting works here. That is why crews trust it." : "Even on its own joint this count is not trustworthy.")
            )
          );
        }
        parts.push(paragraph(strong("Discuss: "), "what has to stay the same for this to go on working?"));
        return parts;
      },
      next: () => ["Next: change the nut", state.repeats !== null],
    },
    {
      title: "Change the nut",
      enter() {
        state.lockFrames = null;
        start(setup.lockNut, state.count, 0);
      },
      tell() {
        const parts = [
          paragraph("Same tool, same joint, still " + state.count + " blows. One thing changes: a lock nut, whose insert resists with " + setup.lockNut.prevailingNm + " N\u00b7m while it runs down."),
        ];
        if (state.lockFrames === null) {
          parts.push(paragraph(handsUp() > 0 ? "The class has predicted. Strike." : "Predict first: how many hands for each?"));
          parts.push(handTable("hands", ANSWERS.map((a) => a.title), state.hands, "Hands for each answer"));
        } else {
          const end = state.lockFrames[state.lockFrames.length - 1];
          parts.push(
            end.clampForceKn <= 0
              ? finding(
                  "No clamp force at all, and the tool says done.",
                  "The nut is still " + number(-end.pastSnugDeg / 360, 2) + " turns from touching the joint. Every blow went into turning the nut against its insert."
                )
              : finding(number(end.clampForceKn, 1) + " kN, and the tool says done.", "The bench joint got " + number(state.benchKn, 1) + " kN from the same blows.")
          );
          parts.push(strong("What the class said, " + plural(handsUp(), "hand")), tally());
          parts.push(paragraph(strong("Discuss: "), "what would the tool have to know to notice?"));
        }
        return parts;
      },
      next: () => ["Next: blow by blow", state.lockFrames !== null],
    },
    {
      title: "Blow by blow",
      enter() {
        start(setup.lockNut, 0, state.count);
      },
      tell() {
        const parts = [
          paragraph("The count is off. Go on striking: when does the nut touch the joint, when is the clamp force right? Move a slider: the joint is struck again, to the same blow."),
        ];
        const enough = last() && inWindow() && state.knobs.prevailingNm > 0;
        parts.push(
          make("p", {}, make("button", { type: "button", id: "set-lock", disabled: !enough || state.gone, onclick: setOnLockNut }, enough ? "Set the count to " + last().blow + " instead" : "Set the count here instead"))
        );
        if (state.hard !== null) {
          parts.push(
            finding(
              state.hard.high ? "Now the bench joint goes high: " + number(state.hard.kn, 1) + " kN." : "The bench joint holds " + number(state.hard.kn, 1) + " kN.",
              "A count of " + state.hard.count + " closes this lock nut and " + (state.hard.high ? "over-tightens the plain nut" : "still suits the plain nut") + ". No single count serves both."
            )
          );
          parts.push(make("p", {}, make("button", { type: "button", onclick: () => start(setup.lockNut, 0, state.count) }, "Back to the lock nut")));
        }
        parts.push(paragraph(strong("Look: "), "while the bars are hatched, blows turn the nut and clamp nothing."));
        return parts;
      },
      next: () => ["Next: race", true],
    },
    {
      title: "Race",
      enter() {},
      tell: () => [
        paragraph("Every strategy tightens the same " + setup.raceJoints + " joints of a family. The count is yours; the others are set as tuning on all four families left them. Which one would you buy? Vote first."),
        handTable("votes", setup.strategies, state.votes, "Votes for each strategy"),
      ],
      next: () => ["Print the worksheet", true],
    },
  ];

  function setCount() {
    state.count = last().blow;
    state.benchKn = last().clampForceKn;
    state.benchFrames = state.frames;
    state.repeats = null;
    state.lockFrames = null;
    state.hard = null;
    state.races = {};
    state.unlocked = 2;
    render();
    el("next").focus();
  }

  function setOnLockNut() {
    state.lockCount = last().blow;
    state.waitingFor = "hard";
    start(setup.bench, state.lockCount, state.lockCount);
  }

  function go(step) {
    if (state.playing) {
      engine.ask("PAUSE", {});
    }
    state.step = step;
    state.unlocked = Math.max(state.unlocked, step);
    state.waitingFor = null;
    STEPS[step - 1].enter();
    render();
    renderControls();
    el("step-title").focus({ preventScroll: true });
    window.scrollTo(0, 0);
  }

  /* ---- the page ---- */

  function renderSteps() {
    if (el("steps").children.length === 0) {
      STEPS.forEach((step, i) =>
        el("steps").append(make("li", {}, make("button", { type: "button", onclick: () => go(i + 1) }, "")))
      );
    }
    STEPS.forEach((step, i) => {
      const button = el("steps").children[i].firstChild;
      const done = i + 1 < state.unlocked && i + 1 !== state.step;
      button.textContent = (done ? "\u2713 " : "") + (i + 1) + " " + step.title;
      button.disabled = i + 1 > state.unlocked || state.gone;
      if (i + 1 === state.step) {
        button.setAttribute("aria-current", "step");
      } else {
        button.removeAttribute("aria-current");
      }
    });
  }

  /* Replaces what is told, but leaves it alone where nothing changed, and gives focus back. */
  function renderTold() {
    const fresh = make("div", {}, ...STEPS[state.step - 1].tell());
    const told = el("told");
    if (fresh.innerHTML !== told.dataset.html) {
      const buttons = Array.from(told.querySelectorAll("button"));
      const focused = buttons.indexOf(document.activeElement);
      told.dataset.html = fresh.innerHTML;
      told.replaceChildren(...fresh.childNodes);
      if (focused >= 0) {
        const again = told.querySelectorAll("button")[focused];
        if (again && !again.disabled) {
          again.focus({ preventScroll: true });
        }
      }
    }
    el("step-number").textContent = "Step " + state.step + " of " + STEPS.length;
    el("step-title").textContent = STEPS[state.step - 1].title;
    const [words, ready] = STEPS[state.step - 1].next();
    el("next").textContent = words;
    el("next").disabled = !ready || (state.gone && state.step < STEPS.length);
  }

  function renderBench() {
    const onBench = state.step === 2 || state.step === 4 || state.step === 5;
    el("bench").hidden = !onBench;
    if (!onBench || state.joint === null || state.frames.length === 0) {
      return;
    }
    const f = last();
    const togo = -f.pastSnugDeg / 360;
    const count = state.joint.count;
    el("r-blows").textContent = String(f.blow);
    el("r-count").textContent = count > 0 ? "of " + count + " set" : "no count";
    el("r-says").textContent = state.done ? "done" : f.blow === 0 ? "ready" : state.stopped ? "stopped" : "striking";
    el("r-force").textContent = f.clampForceKn === 0 ? "0" : number(f.clampForceKn, 1);
    el("r-needs").textContent = "kN, needs " + number(state.joint.windowKn[0], 0) + "\u2013" + number(state.joint.windowKn[1], 0);
    el("r-gap").textContent = togo > 0 ? number(togo, 2) : number(f.pastSnugDeg, 0) + "\u00b0";
    el("r-gap-unit").textContent = togo > 0 ? "turns to go" : "past touching";
    el("p-section").innerHTML = pictures.section(state.joint.knobs.prevailingNm > 0, Math.max(0, togo), f.clampForceKn);
    el("v-torque").textContent =
      "The nut stands " + number(f.pastSnugDeg, 0) + " degrees past touching the joint; turning it on takes " + number(f.resistNm, 1) +
      " newton metres, of which " + number(f.clampingNm, 1) + " clamp. The window is " + number(state.joint.windowNm[0], 1) + " to " + number(state.joint.windowNm[1], 1) + ".";
    el("v-force").textContent =
      "Clamp force in kilonewtons by blow: " + state.frames.map((x) => x.blow + ": " + number(x.clampForceKn, 1)).join(", ") + ".";
    pictures.draw(el("p-torque"), pictures.torque(state.joint, state.frames));
    pictures.draw(
      el("p-force"),
      pictures.force({
        frames: state.frames,
        bench: state.step >= 4 ? state.benchFrames : null,
        count: count > 0 ? count : state.step === 2 ? 0 : state.count,
        window: state.joint.windowKn,
        predictedKn: predictedKn(),
      })
    );
    renderLedger();
    renderControls();
  }

  function renderLedger() {
    pictures.ledger(el("ledger"), state.frames);
    const real = state.frames.filter((f) => f.blow > 0 && !f.spinUp);
    const sum = (name) => real.reduce((total, f) => total + f[name], 0);
    el("ledger-sum").textContent = "so far " + number(sum("insertJ"), 1) + " J and " + number(sum("clampingJ"), 1) + " J";
    el("v-ledger").textContent = real
      .map((f) => "Blow " + f.blow + ": " + number(f.energyJ, 2) + " joule, " + number(f.insertJ, 2) + " on the insert, " + number(f.clampingJ, 2) + " clamping.")
      .join(" ");
  }

  function renderControls() {
    const waits = state.step === 4 && handsUp() === 0;
    el("play").textContent = state.playing ? "Pause" : "Play";
    el("play").disabled = state.gone || waits || state.starting || (state.stopped && !state.playing);
    el("blow").disabled = state.gone || waits || state.starting || state.stopped || state.playing;
    el("again").disabled = state.gone;
    el("status").textContent = state.gone
      ? "The bench is gone."
      : waits
        ? "Striking begins when the class has predicted."
        : state.done
          ? "The tool has stopped itself."
          : state.stopped
            ? "No more blows here."
            : "";
    const sliders = state.step === 5 || (state.step === 4 && state.lockFrames !== null);
    el("sliders").hidden = !sliders;
    setup.sliders.forEach((slider) => {
      const input = el("slider-" + slider.name);
      if (document.activeElement !== input) {
        input.value = state.knobs[slider.name];
      }
      input.disabled = state.gone;
      el("value-" + slider.name).textContent = knobText(slider, state.knobs[slider.name]);
    });
  }

  function knobText(slider, value) {
    const digits = slider.step >= 1 ? 0 : slider.step >= 0.1 ? 1 : 2;
    return slider.unit === "%" ? number(100 * value, 0) + " %" : number(value, digits) + (slider.unit === "" ? "" : " " + slider.unit);
  }

  function buildSliders() {
    setup.sliders.forEach((slider) => {
      el("sliders").append(
        make(
          "label",
          {},
          make("span", {}, slider.title),
          make("output", { id: "value-" + slider.name }),
          make("input", {
            type: "range",
            id: "slider-" + slider.name,
            min: String(slider.least),
            max: String(slider.most),
            step: String(slider.step),
            oninput: (event) => {
              const wanted = { ...state.knobs, [slider.name]: Number(event.target.value) };
              state.knobs = engine.snap(wanted);
              turnSoon();
            },
          })
        )
      );
    });
  }

  let turning = false;
  function turnSoon() {
    if (!turning) {
      turning = true;
      requestAnimationFrame(() => {
        turning = false;
        engine.ask("TURN", { knobs: state.knobs });
      });
    }
  }

  const others = {
    1: () => [
      make("div", { class: "pictures", style: "grid-template-columns:repeat(2,minmax(0,230px));max-width:560px" },
        pictureOf("Plain nut, on the bench", false), pictureOf("Lock nut, in the field", true)),
      paragraph("Drawn cut open. The insert is the hatched ring in the lock nut."),
    ],
    3: () => [
      make("h3", { id: "t-repeats" }, setup.repeats + " bench joints, " + state.count + " blows each"),
      make("div", { class: "chart", id: "p-repeats" }),
      make("p", { class: "hidden", id: "v-repeats" }, state.repeats === null ? "" : "Clamp forces in kilonewtons: " + state.repeats.repeats.map((r) => number(r.clampForceKn, 1)).join(", ")),
      paragraph("One dot per joint; filled: in the window."),
    ],
    6: raceView,
  };

  function pictureOf(title, insert) {
    const figure = make("figure", { class: "section" }, make("h3", {}, title));
    const place = make("div", {});
    place.innerHTML = pictures
      .section(insert, 1, 0)
      .replaceAll("thread", "thread-" + insert)
      .replaceAll("rub", "rub-" + insert)
      .replace('aria-labelledby="t-section d-section"', 'aria-labelledby="d-' + insert + '"')
      .replace('id="d-section"', 'id="d-' + insert + '"');
    figure.append(place);
    return figure;
  }

  function raceView() {
    const chosen = document.querySelector("input[name=family]:checked");
    const family = chosen ? Number(chosen.value) : Math.max(0, setup.families.indexOf("lock nut"));
    const race = state.races[setup.families[family]];
    const rows = setup.strategies.map((name, s) => raceRow(name, s, race));
    return [
      make(
        "fieldset",
        { class: "choice" },
        make("legend", {}, "Joints"),
        ...setup.families.map((name, i) =>
          make("label", {}, make("input", { type: "radio", name: "family", value: String(i), checked: i === family, disabled: state.racing, onchange: render }), name)
        )
      ),
      make(
        "p",
        {},
        make("button", { type: "button", class: "primary", id: "race", disabled: state.gone || state.racing || (race && race.done === race.of), onclick: () => {
          state.racing = true;
          engine.ask("RACE", { family: family, count: Math.max(1, state.count) });
          render();
        } }, "Race on " + setup.raceJoints + " joints"),
        " ",
        make("span", { class: "kicker" }, race ? race.done + " of " + race.of + " joints" : "")
      ),
      make(
        "table",
        { class: "rows" },
        make("caption", { class: "kicker", style: "text-align:left" }, "One dot for five joints. Filled: in the window. Hatched: silent miss, called done and low. Square: too high. Hollow: low and not called done."),
        make("tbody", {}, ...rows)
      ),
      make("p", {}, make("button", { type: "button", id: "csv", onclick: saveCsv }, "Save the results (CSV)")),
    ];
  }

  function raceRow(name, s, race) {
    const standing = race ? race.standings[s] : null;
    const dots = make("div", { class: "dots", "aria-hidden": "true" });
    const parts = standing
      ? [["in", standing.inWindow], ["silent", standing.silentMiss], ["high", standing.high], ["low", standing.other]]
      : [];
    const shares = shareDots(parts.map((p) => p[1]), race ? Math.round(race.done / 5) : 0);
    parts.forEach(([kind], i) => {
      for (let k = 0; k < shares[i]; k++) {
        dots.append(make("i", { class: kind }));
      }
    });
    while (dots.children.length < setup.raceJoints / 5) {
      dots.append(make("i", { class: "ahead" }));
    }
    const label = name === "blow count" ? name + ", set to " + state.count : name;
    const words = standing
      ? standing.inWindow + " in window, " + standing.silentMiss + (standing.silentMiss === 1 ? " silent miss" : " silent misses") + ", " + standing.high + " too high" + (standing.other ? ", " + standing.other + " low and not called done" : "")
      : "";
    return make("tr", {}, make("th", { scope: "row" }, label, make("span", { class: "kicker" }, " " + plural(state.votes[s], "vote"))), make("td", {}, dots), make("td", {}, words));
  }

  /* Whole dots that add up, by largest remainder. */
  function shareDots(counts, total) {
    const sum = counts.reduce((a, b) => a + b, 0);
    const exact = counts.map((c) => (sum === 0 ? 0 : (c * total) / sum));
    const whole = exact.map(Math.floor);
    const order = exact.map((e, i) => [e - whole[i], i]).sort((a, b) => b[0] - a[0]);
    for (let k = 0; whole.reduce((a, b) => a + b, 0) < total && k < order.length; k++) {
      whole[order[k][1]] += 1;
    }
    return whole;
  }

  function renderOther() {
    const view = others[state.step];
    el("other").hidden = !view;
    if (!view) {
      el("other").replaceChildren();
      el("other").dataset.html = "";
      return;
    }
    const fresh = make("div", {}, ...view());
    const key = state.step + fresh.innerHTML;
    if (key !== el("other").dataset.html) {
      const ids = document.activeElement && el("other").contains(document.activeElement) ? document.activeElement : null;
      const again = ids === null ? null : ids.id ? "#" + ids.id : ids.value !== undefined ? "input[value='" + ids.value + "']" : null;
      el("other").dataset.html = key;
      el("other").replaceChildren(...fresh.childNodes);
      if (again !== null && el("other").querySelector(again)) {
        el("other").querySelector(again).focus({ preventScroll: true });
      }
      if (state.step === 3 && state.repeats !== null) {
        pictures.draw(el("p-repeats"), pictures.repeats(state.repeats.repeats, state.joint.windowKn));
      }
    }
  }

  function render() {
    renderSteps();
    renderTold();
    renderBench();
    renderOther();
    renderWorksheet();
  }

  /* ---- to take away ---- */

  const QUESTIONS = [
    "What did you predict for the lock nut, and why?",
    "Which count did the bench joint need? What clamp force did it give?",
    "Where did the energy of the blows go on the lock nut? Name the blow from which it clamps.",
    "Why can no single count serve the bench joint and the lock nut?",
    "What would a tool have to measure to notice that the joint is not done?",
    "Which strategy would you choose for a mixed delivery, and what would you ask its maker to prove?",
  ];

  function facts() {
    const lines = [["what", "value", "unit"]];
    ANSWERS.forEach((a, i) => lines.push(["hands for: " + a.title, state.hands[i], "hands"]));
    if (state.count > 0) {
      lines.push(["count set on the bench joint", state.count, "blows"], ["bench joint, clamp force", number(state.benchKn, 2), "kN"]);
    }
    if (state.repeats !== null) {
      state.repeats.repeats.forEach((r) => lines.push(["bench joint repeat " + r.joint + ", clamp force", r.clampForceKn.toFixed(2), "kN"]));
    }
    if (state.lockFrames !== null) {
      state.lockFrames.forEach((f) => {
        lines.push(["lock nut, clamp force after blow " + f.blow, f.clampForceKn.toFixed(2), "kN"]);
        lines.push(["lock nut, nut angle past touching after blow " + f.blow, f.pastSnugDeg.toFixed(1), "deg"]);
      });
    }
    if (state.hard !== null) {
      lines.push(["count set on the lock nut", state.hard.count, "blows"], ["bench joint with that count, clamp force", state.hard.kn.toFixed(2), "kN"]);
    }
    Object.values(state.races).forEach((race) =>
      race.standings.forEach((s, i) => {
        const name = race.family + ", " + s.strategy;
        lines.push([name + ", votes", state.votes[i], "hands"], [name + ", in window", s.inWindow, "of " + race.done]);
        lines.push([name + ", silent misses", s.silentMiss, "of " + race.done], [name + ", too high", s.high, "of " + race.done]);
      })
    );
    return lines;
  }

  function saveCsv() {
    const quoted = (field) => (/[",\n]/.test(String(field)) ? '"' + String(field).replaceAll('"', '""') + '"' : String(field));
    const text = facts().map((line) => line.map(quoted).join(",")).join("\n") + "\n";
    const link = make("a", { href: URL.createObjectURL(new Blob([text], { type: "text/csv" })), download: "lesson-results.csv" });
    document.body.append(link);
    link.click();
    link.remove();
  }

  function renderWorksheet() {
    const sheet = el("worksheet");
    sheet.hidden = state.step !== 6;
    if (state.step !== 6) {
      return;
    }
    const results = facts().slice(1).filter((line) => !/repeat|after blow/.test(line[0]));
    sheet.replaceChildren(
      make("h2", { id: "t-worksheet" }, "Worksheet"),
      paragraph("Name: ______________________   Date: ______________"),
      make("ol", {}, ...QUESTIONS.map((q) => make("li", {}, q, make("span", { class: "line" }), make("span", { class: "line" })))),
      make("h3", {}, "What this class saw"),
      make("table", { class: "rows" }, make("tbody", {}, ...results.map((line) => make("tr", {}, make("th", { scope: "row" }, String(line[0])), make("td", {}, line[1] + " " + line[2])))))
    );
  }

  el("next").addEventListener("click", () => {
    if (state.step === STEPS.length) {
      window.print();
    } else {
      go(state.step + 1);
    }
  });
  el("play").addEventListener("click", () => {
    if (state.playing) {
      engine.ask("PAUSE", {});
    } else if (quiet.matches && state.joint.count > 0) {
      start(state.knobs, state.joint.count, state.joint.count);
    } else {
      engine.ask("PLAY", {});
    }
  });
  el("blow").addEventListener("click", () => engine.ask("BLOW", {}));
  el("again").addEventListener("click", () => start(state.knobs, state.joint.count, 0));

  buildSliders();
  render();
})();
