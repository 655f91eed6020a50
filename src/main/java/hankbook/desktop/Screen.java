package hankbook.desktop;

import javafx.scene.Node;

/**
 * One of the screens that the navigation leads to.
 *
 * @param name as the navigation says it
 * @param mark the style class of its drawn mark
 * @param chord the keys that lead to it
 * @param node what it shows
 * @param refresh asks the ledger anew, each time the screen is turned to
 * @param search puts the keyboard where its things are looked for
 */
record Screen(String name, String mark, Chord chord, Node node, Runnable refresh, Runnable search) {}
