/*
 * Where the lesson's numbers come from. Both engines take the same requests and answer with the same messages: the live one
 * from the plant on this machine, the other from joints that the plant computed beforehand.
 */
const BLOW_EVERY_MS = 550;

function liveEngine(setup, hear) {
  "use strict";
  const page = Array.from(crypto.getRandomValues(new Uint8Array(8)), (b) => b.toString(16).padStart(2, "0")).join("");
  const query = "?page=" + page + "&token=" + setup.token;
  const stream = new EventSource("/events" + query);
  const waiting = [];
  let order = Promise.resolve();
  let open = false;
  let gone = false;

  function lost() {
    if (!gone) {
      gone = true;
      stream.close();
      hear("Gone", {});
    }
  }

  /* One after the other: a blow must not overtake the start before it. */
  function send(request) {
    order = order.then(() => post(request));
  }

  function post(request) {
    return fetch("/ask" + query, {
      method: "POST",
      headers: { "Content-Type": "application/json" },
      body: JSON.stringify(request),
    })
      .then((answer) => {
        if (answer.status === 409) {
          lost();
        } else if (!answer.ok) {
          hear("Refused", { status: answer.status });
        }
      })
      .catch(lost);
  }

  ["Joint", "Frames", "Frame", "Repeats", "Race", "Playing"].forEach((name) =>
    stream.addEventListener(name, (event) => hear(name, JSON.parse(event.data)))
  );
  stream.addEventListener("open", () => {
    open = true;
    waiting.splice(0).forEach(send);
  });
  stream.addEventListener("error", lost);
  window.addEventListener("pagehide", () => stream.close());

  return {
    ask(action, fields) {
      const request = { action: action, knobs: null, count: 0, blows: 0, family: 0, ...fields };
      if (gone) {
        return;
      }
      if (open) {
        send(request);
      } else {
        waiting.push(request);
      }
    },
    snap: (knobs) => knobs,
  };
}

function tableEngine(setup, hear) {
  "use strict";
  const tables = setup.tables;
  let joint = null;
  let knobs = null;
  let count = 0;
  let blows = 0;
  let timer = null;

  function nearest(positions, value) {
    let best = 0;
    positions.forEach((position, i) => {
      if (Math.abs(position - value) < Math.abs(positions[best] - value)) {
        best = i;
      }
    });
    return best;
  }

  const names = ["prevailingNm", "stiffnessKnPerMm", "friction", "battery"];
  const places = (wanted) => names.map((name) => nearest(tables.positions[name], wanted[name]));

  function snap(wanted) {
    const at = places(wanted);
    return Object.fromEntries(names.map((name, i) => [name, tables.positions[name][at[i]]]));
  }

  function frame(blow) {
    const row = joint.frames[blow];
    const names = "blow timeS pastSnugDeg clampForceKn clampingNm resistNm energyJ insertJ clampingJ spinUp".split(" ");
    const read = Object.fromEntries(names.map((name, i) => [name, row[i]]));
    read.spinUp = read.spinUp === 1;
    if (count > 0 && blow === count) {
      const end = joint.stopped[count - 1];
      "pastSnugDeg clampForceKn clampingNm resistNm insertJ clampingJ".split(" ").forEach((name, i) => (read[name] = end[i]));
    }
    return read;
  }

  const last = () => joint.frames.length - 1;
  const done = () => count > 0 && blows >= count;
  const stopped = () => blows >= Math.min(last(), count === 0 ? last() : count);

  function sayAll() {
    hear("Joint", { ...joint.joint, knobs: knobs, count: count });
    const frames = [];
    for (let blow = 0; blow <= blows; blow++) {
      frames.push(frame(blow));
    }
    hear("Frames", { frames: frames, done: done(), stopped: stopped() });
  }

  function load(wanted) {
    knobs = snap(wanted);
    joint = tables.joints[places(wanted).join("/")];
  }

  function strike() {
    if (!stopped()) {
      blows += 1;
      hear("Frame", { frame: frame(blows), done: done(), stopped: stopped() });
    }
  }

  function pause() {
    if (timer !== null) {
      clearInterval(timer);
      timer = null;
      hear("Playing", { playing: false });
    }
  }

  function play() {
    if (timer === null && !stopped()) {
      hear("Playing", { playing: true });
      timer = setInterval(() => {
        strike();
        if (stopped()) {
          pause();
        }
      }, BLOW_EVERY_MS);
    }
  }

  const actions = {
    START(request) {
      pause();
      load(request.knobs);
      count = request.count;
      blows = Math.min(request.blows, count === 0 ? last() : count, last());
      sayAll();
    },
    TURN(request) {
      load(request.knobs);
      sayAll();
    },
    BLOW() {
      pause();
      strike();
    },
    PLAY: play,
    PAUSE: pause,
    REPEAT(request) {
      const at = tables.counts.indexOf(request.count);
      hear(at < 0 ? "Refused" : "Repeats", at < 0 ? {} : { count: request.count, repeats: tables.repeats[at] });
    },
    RACE(request) {
      const at = tables.counts.indexOf(request.count);
      hear(at < 0 ? "Refused" : "Race", at < 0 ? {} : { progress: tables.races[request.family][at] });
    },
  };

  return {
    ask(action, fields) {
      const request = { knobs: null, count: 0, blows: 0, family: 0, ...fields };
      setTimeout(() => actions[action](request), 0);
    },
    snap: snap,
  };
}
