package hankbook.desktop;

import hankbook.allot.Setting;
import hankbook.desktop.say.Say;
import hankbook.ledger.Entry;
import hankbook.ledger.EntryKind;
import hankbook.ledger.LastSaid;
import hankbook.ledger.Place;
import hankbook.ledger.Transfer;
import hankbook.measure.Length;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** What was done, as one would tell it: {@code reserved 320.0 m for Quay towels}. */
final class DeedWords {
  private DeedWords() {}

  /** One entry. */
  static String of(Entry entry) {
    String yarn = Wording.yarn(entry.transfers().stream().map(Transfer::length).reduce(Length.ZERO, Length::plus));
    String skeins = skeins(entry.transfers());
    String plan = plans(entry);
    return switch (entry.kind()) {
      case EXPECT -> Say.text("put {0} of {1} on order", yarn, skeins);
      case RECEIVE -> Say.text("received {0} of {1}", yarn, skeins);
      case RESERVE -> Say.text("reserved {0} for {1}", yarn, plan);
      case RELEASE -> Say.text("released {0} of {1}", yarn, plan);
      case DRAW -> Say.text("drew {0} to the loom for {1}", yarn, plan);
      case RETURN -> Say.text("returned {0} from the loom for {1}", yarn, plan);
      case WOVEN -> Say.text("wove {0} into {1}", yarn, plan);
      case WASTE -> Say.text("left {0} of {1} in thrums", yarn, plan);
      case SAMPLE -> Say.text("sampled {0} for {1}", yarn, plan);
      case RECOUNT -> Say.text("put {0} right by {1}", skeins, yarn);
      case PART_WITH -> Say.text("parted with {0} of {1}", yarn, skeins);
      case REWIND -> wound(entry);
      case REVERSAL -> Say.text("took something back: {0} of {1}", yarn, skeins);
    };
  }

  private static String wound(Entry entry) {
    List<Transfer> off = entry.transfers().stream().filter(transfer -> transfer.to().kind() == Place.Kind.REWOUND).toList();
    List<Transfer> onto = entry.transfers().stream().filter(transfer -> transfer.from().kind() == Place.Kind.REWOUND).toList();
    String yarn = Wording.yarn(off.stream().map(Transfer::length).reduce(Length.ZERO, Length::plus));
    return Say.text("wound {0} from {1} onto {2}", yarn, skeins(off), skeins(onto));
  }

  private static String skeins(List<Transfer> transfers) {
    List<String> codes = transfers.stream().map(Transfer::skein).distinct().toList();
    return codes.size() <= 3 ? String.join(", ", codes) : Say.count(codes.size(), "{0} skein", "{0} skeins");
  }

  private static String plans(Entry entry) {
    return entry.transfers().stream()
        .flatMap(transfer -> Stream.of(transfer.from().planName(), transfer.to().planName()))
        .filter(plan -> !plan.isEmpty())
        .distinct()
        .collect(Collectors.joining(", "));
  }

  /** Whether taking an entry back brings something about again. */
  static boolean isTakenBack(Entry entry) {
    return entry.kind() == EntryKind.REVERSAL;
  }

  /** What was said since and is no entry. */
  static String since(LastSaid said) {
    return switch (said.what()) {
      case PLAN -> Say.text("The text of the plan {0}, which you changed since, stays as it is: the journal holds only yarn that moved.", said.name());
      case SETTING -> Say.text("The setting {0}, which you changed since, stays as it is: the journal holds only yarn that moved.", setting(said.name()));
      case LOOM -> Say.text("The loom {0}, which you changed since, stays as it is: the journal holds only yarn that moved.", said.name());
      case REED -> Say.text("The reed {0}, which you changed since, stays as it is: the journal holds only yarn that moved.", said.name());
      case PURCHASE -> Say.text("Purchase {0}, which you entered since, stays as it is; correct it or take it back under Costs.", said.name());
      case SKEIN -> Say.text("What is written down of {0}, which you changed since, stays as it is: the journal holds only yarn that moved.", said.name());
      case MEASURE -> Say.text("{0}, which you measured since, stays as it was found: the journal holds only yarn that moved.", said.name());
      case SAMPLE -> Say.text("The grist of {0}, which you weighed or gave up since, stays as it is: the journal holds only yarn that moved.", said.name());
      case DUE -> Say.text("The day on which {0} is expected, which you changed since, stays as it is: the journal holds only yarn that moved.", said.name());
      case TURNS -> Say.text("The order of your plans, which you changed since, stays as it is: the journal holds only yarn that moved.");
      case ACTUALS -> Say.text("What you wrote down since of how {0} came out stays as it is: the journal holds only yarn that moved.", said.name());
    };
  }

  /** A setting that this version does not know is called as the ledger has it. */
  private static String setting(String key) {
    return Arrays.stream(Setting.values()).filter(setting -> setting.key().equals(key)).findFirst().map(SettingWords::name).orElse(key);
  }
}
