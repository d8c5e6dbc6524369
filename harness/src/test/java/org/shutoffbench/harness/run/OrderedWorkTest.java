package org.shutoffbench.harness.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OrderedWorkTest {

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 8})
    void resultsArriveInOrderWhateverTheNumberOfThreads(int threads) throws InterruptedException {
        List<Long> squares = new ArrayList<>();
        OrderedWork.run(3, 200, threads, () -> chunk -> chunk * chunk, squares::add);
        assertThat(squares)
                .isEqualTo(LongStream.range(3, 200).map(c -> c * c).boxed().toList());
    }

    @Test
    void eachThreadGetsItsOwnWorker() throws InterruptedException {
        AtomicInteger made = new AtomicInteger();
        OrderedWork.run(
                0,
                100,
                2,
                () -> {
                    made.incrementAndGet();
                    return chunk -> chunk;
                },
                result -> {});
        assertThat(made.get()).isBetween(1, 2);
    }

    @Test
    void aFailureReachesTheCallerAsItIs() {
        assertThatThrownBy(() -> OrderedWork.<Long>run(
                        0,
                        10,
                        2,
                        () -> chunk -> {
                            if (chunk == 7) {
                                throw new IllegalStateException("chunk 7");
                            }
                            return chunk;
                        },
                        result -> {}))
                .isInstanceOf(IllegalStateException.class)
                .hasMessage("chunk 7");
    }
}
