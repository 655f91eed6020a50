package hankbook.desktop;

import hankbook.desktop.colour.ColourPicker;
import hankbook.desktop.say.Say;

/** Beside the shelf: picks the colour that yarns are ordered by nearness to. */
final class NearColourPage extends SidePage {
  private final ColourPicker picker;
  private final ShelfGroups groups;

  NearColourPage(ShelfGroups groups, Work work, Runnable close) {
    super(close);
    this.groups = groups;
    picker = new ColourPicker(work, groups.pickedProperty()::set);
    setId("near-colour");
    fill(
        heading(Labels.title(Say.text("Near to a colour"))),
        Labels.quiet(Say.text("Type a colour or point at it in a photograph; the shelf then stands in order of how near each yarn looks to it. A difference of 1 can just be seen side by side.")),
        picker);
  }

  void begin() {
    picker.begin(groups.pickedProperty().get());
  }
}
