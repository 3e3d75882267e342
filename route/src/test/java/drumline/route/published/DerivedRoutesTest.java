package drumline.route.published;

import static org.assertj.core.api.Assertions.assertThat;

import drumline.route.Asked;
import drumline.route.RouteCases;
import drumline.shop.operation.Route;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Which operations a piece asks for: common practice, routes.txt. */
class DerivedRoutesTest {

  static List<RouteCases.Case> cases() {
    return RouteCases.all();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("cases")
  void aPieceGetsTheUsualOperations(RouteCases.Case piece) {
    Route route = piece.asked().route();
    assertThat(Asked.line(route)).isEqualTo(piece.expected());
  }
}
