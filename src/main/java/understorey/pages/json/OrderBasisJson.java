package understorey.pages.json;

import static understorey.pages.tables.Column.data;
import static understorey.pages.words.Words.ifKnown;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import understorey.advice.Measure;
import understorey.advice.VisitAdvice;
import understorey.brief.Brief;
import understorey.order.OrderBasis;
import understorey.pages.tables.Column;
import understorey.pages.tables.Facts;

/** What the running order is computed from. */
final class OrderBasisJson {

    private static final List<Column<OrderBasis.Shot>> SHOT = List.of(
            data("name", OrderBasis.Shot::name),
            data("spot", OrderBasis.Shot::spot),
            data("lens", OrderBasis.Shot::lens),
            data("duration_min", Measure.MINUTES, OrderBasis.Shot::minutes),
            data("priority", Measure.COUNT, OrderBasis.Shot::priority),
            data("start", OrderBasis.Shot::start),
            data("after", OrderBasis.Shot::after),
            data("worth", Measure.SHARE, OrderBasis.Shot::worth));

    private static final List<Column<OrderBasis.Travel>> TRAVEL = List.of(
            data("day", Measure.MINUTES, OrderBasis.Travel::byDay),
            data("head_torch", Measure.MINUTES, OrderBasis.Travel::byHeadTorch));

    private static final List<Column<OrderBasis>> BEFORE = List.of(
            data("objective", basis -> new VisitAdvice.OrderObjective()),
            data("grades", Measure.SHARE, OrderBasis::grades),
            data("wait_cost_per_min", Measure.SHARE, OrderBasis::idlePrice),
            data("wait_between_cost_per_hour", Measure.SHARE, OrderBasis::waitPrice),
            data("break_from_min", Measure.MINUTES, OrderBasis::breakMin),
            data("move_cost", Measure.SHARE, OrderBasis::movePrice),
            data("least_gain", Measure.SHARE, OrderBasis::leastGain),
            data("arrive", OrderBasis::from),
            data("leave", OrderBasis::to),
            data("base", OrderBasis::base));

    private static final List<Column<OrderBasis>> AFTER = List.of(
            data("step_min", Measure.MINUTES, OrderBasis::stepMin),
            data("set_up_min", Measure.MINUTES, OrderBasis::setUpMin),
            data("lens_change_min", Measure.MINUTES, OrderBasis::changeMin),
            data("first_start", OrderBasis::firstStart),
            data("shots", basis -> Facts.each(SHOT, basis.shots())),
            data("travel_min", OrderBasisJson::travel));

    private OrderBasisJson() {
    }

    /** Null where the place is spared. */
    static @Nullable Facts<OrderBasis> of(Brief brief) {
        return ifKnown(brief.order().basis(), basis -> new Facts<>(Column.all(BEFORE,
                List.of(data("head_torch_until", of -> brief.day().headTorch().until()),
                        data("head_torch_from", of -> brief.day().headTorch().from())),
                AFTER), basis));
    }

    private static Map<String, Facts<OrderBasis.Travel>> travel(OrderBasis basis) {
        Map<String, Facts<OrderBasis.Travel>> minutes = new LinkedHashMap<>();
        basis.travel().forEach(way -> minutes.put(way.from() + " > " + way.to(), new Facts<>(TRAVEL, way)));
        return minutes;
    }
}
