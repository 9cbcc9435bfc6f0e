package understorey.pages.json;

import java.math.BigDecimal;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import understorey.advice.Advice;
import understorey.advice.VisitAdvice;
import understorey.order.OrderBasis;
import understorey.pages.words.Figures;
import understorey.pages.words.Words;
import understorey.visit.HeadTorchHours;

/** What the running order is computed from, in {@code plan.json}. */
final class OrderBasisJson {

    private OrderBasisJson() {
    }

    static void write(Json json, OrderBasis basis, HeadTorchHours torch, Function<Advice, String> sentences) {
        json.text("objective", sentences.apply(new VisitAdvice.OrderObjective()))
                .object("grades", basis.grades(), (grades, worth) -> worth.forEach(
                        (grade, from) -> grades.number(Words.word(grade), worth(from))))
                .number("wait_cost_per_min", worth(basis.idlePrice())).number("least_gain", worth(basis.leastGain()))
                .time("arrive", basis.from()).time("leave", basis.to())
                .text("base", basis.base())
                .time("head_torch_until", torch.until()).time("head_torch_from", torch.from())
                .count("step_min", basis.stepMin()).count("set_up_min", basis.setUpMin()).count("lens_change_min", basis.changeMin())
                .time("first_start", basis.firstStart())
                .objects("shots", basis.shots(), OrderBasisJson::shot)
                .object("travel_min", basis.travel(), (travel, ways) -> ways.forEach(way -> travel.object(way.from() + " > " + way.to(), way,
                        (minutes, of) -> minutes.count("day", of.byDay()).count("head_torch", of.byHeadTorch()))));
    }

    private static void shot(Json json, OrderBasis.Shot shot) {
        json.text("name", shot.name()).text("spot", shot.spot()).text("lens", shot.lens()).count("duration_min", shot.minutes())
                .count("priority", shot.priority()).time("start", shot.start()).text("after", shot.after())
                .numbers("worth", shot.worth().stream().map(OrderBasisJson::worth).toList());
    }

    private static @Nullable BigDecimal worth(@Nullable Double worth) {
        return Figures.decimals(worth, 3);
    }
}
