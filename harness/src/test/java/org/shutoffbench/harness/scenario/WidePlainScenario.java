package org.shutoffbench.harness.scenario;

/** A scenario that uses every key, for tests that change it. */
final class WidePlainScenario {

    private WidePlainScenario() {}

    static final String TEXT = """
            bench: 1
            name: every key
            note: "Two lines\\nwith \\"quotes\\" and ümlauts."
            judge: {quantity: clamp force, target: 40 kN, window: 0.2, allow_yield: yes}
            tool:
              based on: heavy
              k_s: {normal: 14000 N*m/rad, cv: 5 %}
              T_0: {normal: 1.97 N*m, sd: 0.04 N*m, per: repeat}
              J_m: 1030 kg*mm^2
            sensors:
              based on: cheap
              rate: 2 kHz
              command_latency: 1.5 ms
              nominal_voltage: 36 V
              arm: {yields: yes, sway: 2 deg, sway_time: 400 ms}
              housing rate: yes
              torque at the anvil: {noise: 3 N*m, low_pass: {order: 1, cutoff: 500 Hz}, range: [-300 N*m, 300 N*m]}
              motor current: no
              anvil angle: {stuck: off, drop_outs: {share: 1 %, length: 2 ms}, rate: 1 kHz, latency: 3 ms}
              blow detection: {missed: 2 %, doubled: 1 %, jitter: 1 ms}
            supply: {uniform: [0.85, 1], per: tool}
            time_limit: 8 s
            joints: 60
            seed: -7
            groups: {joints_per_lot: 12, repeats_per_piece: 3, joints_per_tool: 4}
            every_family:
              running_torque: 0.3 N*m
            families:
              plain:
                thread: 1/2-13
                class: grade 5
                friction: {mu_th: {lognormal: 0.14, lot: 8 %, piece: 6 %, repeat: 2 %}, mu_b: 0.15}
                stiffness: {normal: 1500 kip/in, lot: 3 %, piece: 5 %}
                seating: {lognormal: 10 deg, sigma: 30 %, per: lot}
                turns_to_snug: {uniform: [2, 3]}
                yield: {force: by class, slope_ratio: 0.05, fracture_angle: 40 deg}
              "everything: in one":
                thread: {d: 10 mm, P: 1.5 mm}
                friction: {nut_factor: {normal: 0.2, cv: 8 %}, D_b: 13 mm, static_ratio: {uniform: [1, 1.2]}}
                stiffness: 200 kN/mm
                seating: 12 deg
                yield: {normal: 45 kN, cv: 2 %}
                prevailing: {torque: {uniform: [2 N*m, 6 N*m]}, before_snug: 0.8 turns, ramp: 0.5 turns, present: 30 %}
                fouling: {torque: 3 N*m, present: 50 %}
                coating: {torque_rate: 0.5 N*m/turn}
                damaged_thread: {torque: 4 N*m, width: 40 deg, from: 1 turn, every_turn: yes, present: 0.1}
                galling: {factor: {uniform: [1.2, 2]}, past_snug: {uniform: [5 deg, 60 deg]}, present: 20 %}
              like the second:
                like: "everything: in one"
                prevailing: none
                galling: {from: 2 turns, past_snug: none, factor: 1.5}
              computed from its parts:
                thread: M16
                class: 8.8
                surface: hot-dip galvanised
                layers:
                  - {material: aluminium, thickness: 20 mm, width: 80 mm, hole: 17.5 mm}
                  - {thickness: 12 mm, width: 80 mm, hole: 17.5 mm}
                washers: 2
                bolt_length: 70 mm
                parts_method: frusta
                springs: [500 kN/mm]
                stiffness: {computed times: {normal: 1, cv: 5 %}}
                seating: 12 deg
              from the grip:
                thread: M12
                class: 10.9
                state: weathered lock nut
                grip: {normal: 40 mm, sd: 0.5 mm}
                hole: 14 mm
                seating: 12 deg
            settings:
              home: {made: {by: hand}, strategies: {blow count: {blows: 9}, elapsed time: {drive time: 400 ms}}}
            strategies:
              - blow count
              - {name: elapsed time, label: clock, settings: {drive time: 0.4 s}, without: blow detection}
            draws: {seed: 3, scenario: another, family: its family, joint: 17}
            """;
}
