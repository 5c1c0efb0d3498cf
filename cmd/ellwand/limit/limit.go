// Package limit bounds what comes in, before any work is done on it: every bound
// of the program on files, lists, names and numbers is in its table. They are our
// own choice: far above any job of a workroom, and low enough that the largest
// job that they allow is laid in less than 1 GB of memory.
package limit

import "ellwand/pieces/language"

// Limit is a bound on one thing that comes in.
type Limit int

// The limits.
const (
	JobSize Limit = iota
	InstanceSize
	PiecesFile
	LayoutSize
	Layouts
	Points
	Marks
	Depth
	Text
	Paragraph
	Wearers
	Garments
	Made
	Pieces
	Parts
	Cloths
	Widths
	Offers
	Remnants
	Flaws
	Corners
	Sizes
	List
	Outputs
	Arguments
	Argument
	PiecesOfLay
	CornersOfLay
	Faults
	Workers
	Passes
	Items
	Demand
	Vertices
	Orientations
	VerticesOfAll
	Port
	Drawings
	DrawingSize
	DrawnThings
	DrawnPoints
	DrawnNesting
	DrawnOutlines
	DrawnWords
	// ClothWidth is in mm.
	ClothWidth
)

// table of the limits: the most, and what is said of more.
var table = [...]struct {
	most            int
	english, german string
}{
	JobSize: {1 << 20, "is too large for a job file, which has at most %d bytes (1 MB); is it the right file?",
		"ist zu groß für eine Auftragsdatei, die höchstens %d Byte (1 MB) hat; ist es die " +
			"richtige Datei?"},
	InstanceSize: {64 << 20, "is too large for an instance, which has at most %d bytes (64 MB); is it the right file?",
		"ist zu groß für eine Instanz, die höchstens %d Byte (64 MB) hat; ist es die richtige " +
			"Datei?"},
	PiecesFile: {4 << 20, "is too large for a file of pieces, which has at most %d bytes (4 MB); is it the right " +
		"file?",
		"ist zu groß für eine Schnittdatei, die höchstens %d Byte (4 MB) hat; ist es die richtige" +
			" Datei?"},
	LayoutSize: {16 << 20, "is too large for a layout, which has at most %d bytes (16 MB); is it the right file?",
		"ist zu groß für eine Lage, die höchstens %d Byte (16 MB) hat; ist es die richtige Datei?"},
	Layouts: {50, "has more than %d entries; bring in those of the cloths that are laid",
		"hat mehr als %d Einträge; nehmen Sie die der Stoffe, die aufgelegt werden"},
	Points: {5000, "has more than %d points; give it with fewer",
		"hat mehr als %d Punkte; geben Sie weniger an"},
	Marks: {500, "has more than %d entries; leave some out",
		"hat mehr als %d Einträge; lassen Sie einige weg"},
	Depth: {100, "is nested more than %d deep; a job file never is: check its brackets and indentation",
		"ist mehr als %d tief verschachtelt; eine Auftragsdatei ist das nie: prüfen Sie Klammern " +
			"und Einrückungen"},
	Text: {200, "is longer than %d characters; shorten it", "ist länger als %d Zeichen; kürzen Sie es"},
	Paragraph: {2000, "is longer than %d characters; shorten it, or make two entries of it",
		"ist länger als %d Zeichen; kürzen Sie es, oder machen Sie zwei Einträge daraus"},
	Wearers: {500, "has more than %d entries; make a job for each %[1]d wearers",
		"hat mehr als %d Einträge; machen Sie für je %[1]d Personen einen Auftrag"},
	Garments: {200, "has more than %d entries; make a job for each %[1]d garments",
		"hat mehr als %d Einträge; machen Sie für je %[1]d Kleidungsstücke einen Auftrag"},
	Made: {10_000, "makes more than %d garments in all, counted by wearer and quantity; make several jobs of" +
		" it",
		"ergibt mehr als %d Kleidungsstücke, nach Person und Anzahl gezählt; machen Sie mehrere " +
			"Aufträge daraus"},
	Pieces: {500, "has more than %d entries; make two garments of it",
		"hat mehr als %d Einträge; machen Sie zwei Kleidungsstücke daraus"},
	Parts: {100, "has more than %d entries; make two garments of it",
		"hat mehr als %d Einträge; machen Sie zwei Kleidungsstücke daraus"},
	Cloths: {50, "has more than %d entries; make several jobs of it",
		"hat mehr als %d Einträge; machen Sie mehrere Aufträge daraus"},
	Widths: {50, "has more than %d entries; leave some out",
		"hat mehr als %d Einträge; lassen Sie einige weg"},
	Offers: {100, "has more than %d entries; leave some out",
		"hat mehr als %d Einträge; lassen Sie einige weg"},
	Remnants: {100, "has more than %d entries; ask about some of them at a time",
		"hat mehr als %d Einträge; fragen Sie nach einigen davon"},
	Flaws: {200, "has more than %d entries; join those that lie side by side",
		"hat mehr als %d Einträge; fassen Sie zusammen, was nebeneinander liegt"},
	Corners: {500, "has more than %d corners; give the outline with fewer",
		"hat mehr als %d Ecken; geben Sie den Umriss mit weniger an"},
	Sizes: {50, "has more than %d entries; leave some out",
		"hat mehr als %d Einträge; lassen Sie einige weg"},
	List: {1000, "has more than %d entries; leave some out",
		"hat mehr als %d Einträge; lassen Sie einige weg"},
	Outputs: {20, "has more than %d entries; leave some out",
		"hat mehr als %d Einträge; lassen Sie einige weg"},
	Arguments: {1000, "has more than %d words; give one job file, and each option once",
		"hat mehr als %d Wörter; geben Sie eine Auftragsdatei und jede Option einmal an"},
	Argument: {4096, "is longer than %d bytes; shorten it", "ist länger als %d Byte; kürzen Sie es"},
	PiecesOfLay: {10_000, "has more than %d pieces to be cut from it; make several jobs of it",
		"hat mehr als %d Teile, die daraus geschnitten werden; machen Sie mehrere Aufträge daraus"},
	CornersOfLay: {2_000_000, "has outlines of more than %d points in all to be cut from it; make several jobs of it",
		"hat Umrisse von zusammen mehr als %d Punkten, die daraus geschnitten werden; machen Sie " +
			"mehrere Aufträge daraus"},
	Faults: {100, "there are more than %d faults; those that follow are not listed",
		"es sind mehr als %d Fehler; die folgenden sind nicht genannt"},
	Workers: {256, "must be at most %d", "darf höchstens %d sein"},
	Passes:  {1_000_000_000, "must be at most %d", "darf höchstens %d sein"},
	Items: {2000, "are more than %d; lay some of them at a time",
		"sind mehr als %d; legen Sie einige davon auf"},
	Demand: {10_000, "must be at most %d", "darf höchstens %d sein"},
	Vertices: {10_000, "has more than %d points; give it with fewer",
		"hat mehr als %d Punkte; geben Sie weniger an"},
	Orientations: {360, "are more than %d; leave some out", "sind mehr als %d; lassen Sie einige weg"},
	VerticesOfAll: {2_000_000, "have more than %d points in all, copies counted; lay some of them at a time",
		"haben zusammen mehr als %d Punkte, mehrfache mitgezählt; legen Sie einige davon auf"},
	Port: {65_535, "must be at most %d", "darf höchstens %d sein"},
	Drawings: {50, "has more than %d entries; bring in some of them at a time",
		"hat mehr als %d Einträge; nehmen Sie einige davon auf einmal"},
	DrawingSize: {32 << 20, "is too large for a drawing of a pattern, which has at most %d bytes (32 MB); is it the " +
		"right file?",
		"ist zu groß für die Zeichnung eines Schnitts, die höchstens %d Byte (32 MB) hat; ist es " +
			"die richtige Datei?"},
	DrawnThings: {100_000, "has more than %d lines and other things in it; leave out what is no pattern piece",
		"hat mehr als %d Linien und anderes; lassen Sie weg, was kein Schnittteil ist"},
	DrawnPoints: {400_000, "has more than %d points in all; write it with fewer, or in several files",
		"hat zusammen mehr als %d Punkte; schreiben Sie sie mit weniger, oder in mehreren Dateien"},
	DrawnNesting: {16, "has blocks or groups within each other more than %d deep; write it without them",
		"hat Blöcke oder Gruppen mehr als %d tief ineinander; schreiben Sie sie ohne"},
	DrawnOutlines: {500, "has more than %d closed outlines; leave out what is no pattern piece",
		"hat mehr als %d geschlossene Umrisse; lassen Sie weg, was kein Schnittteil ist"},
	DrawnWords: {20_000, "has more than %d texts; leave out what is no pattern piece",
		"hat mehr als %d Texte; lassen Sie weg, was kein Schnittteil ist"},
	ClothWidth: {100_000, "is wider than %d mm, and no cloth is; look at its unit",
		"ist breiter als %d mm, und das ist kein Stoff; prüfen Sie die Einheit"},
}

// Most is the largest number that is allowed.
func (l Limit) Most() int { return table[l].most }

// Sentence says what is wrong with more, and what to do: it goes on from the name
// of the place.
func (l Limit) Sentence() language.Sentence {
	return language.Say(table[l].english, table[l].german, table[l].most)
}

// Check refuses more than is allowed, naming the place.
func (l Limit) Check(place language.Sentence, n int) error {
	if n <= l.Most() {
		return nil
	}
	return language.Refuse("%s %s", "%s %s", place, l.Sentence())
}
