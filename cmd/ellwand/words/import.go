package words

import (
	"errors"
	"fmt"
	"strconv"
	"strings"

	"ellwand/cmd/ellwand/app"
	"ellwand/pieces/found"
	"ellwand/pieces/language"
	"ellwand/pieces/measure"
	piecewords "ellwand/pieces/words"
)

// noteWords are the sentences about an import, in the order of the kinds: for what is
// one, and for several.
var noteWords = map[found.NoteKind][2]string{
	found.RepeatedPoint: {"a point that lay on the one before was left out",
		"{count} points that lay on the one before " +
			"were left out"},
	found.ClosedGap:   {"a gap of {size} was closed", "{count} gaps of at most {size} were closed"},
	found.TurnedRound: {"the outline ran clockwise and was turned round"},
	found.SpikeRemoved: {"a place where the outline ran back on itself was left out",
		"{count} places where the outline ran back on itself were left out"},
	found.TouchParted: {"a place where the outline touched itself was parted by {size}",
		"{count} places where the outline " +
			"touched itself were parted by {size}"},
	found.LineTwice: {"a line that is drawn twice was taken once",
		"{count} lines that are drawn twice were taken once"},
	found.OpenLine: {"a line that lies in no closed outline was left out",
		"{count} lines that lie in no closed outline " +
			"were left out"},
	found.SmallOutline: {"an outline that is too small for a piece was left out",
		"{count} outlines that are too small for " +
			"a piece were left out"},
	found.Ignored:     {"{what} was left out", "{what}, {count} times, was left out"},
	found.UnitAssumed: {"its unit of length is taken to be {what}"},
	found.ChordsKept:  {"its curves are drawn by straight chords, up to {size} off smooth lines; --smooth draws those"},
	found.Untold: {"\"{what}\" in the file is not understood and was left out",
		"\"{what}\" in the file, {count} times, is not understood and was left out"},
	found.Joined: {"a sheet was taken by itself",
		"{count} sheets were joined, row by row: {what}, each {size} over the next"},
	found.ScaleChecked: {"the test square of {what} measures {size}"},
	found.ScaleSet:     {"the test square of {what} measured {size}, and everything was brought to its size"},
	found.DashesJoined: {"strokes were joined to a line",
		"strokes that lie one after the other were joined to {count} lines"},
	found.SharedTaken: {"a stretch was taken from a line of another kind, which sizes share",
		"{count} stretches were taken from " +
			"lines of other kinds, which sizes share"},
	found.KindsMixed: {"all lines were taken",
		"lines of {count} kinds were taken all together; --overview found.pdf " +
			"shows them, --lines chooses"},
	found.PixelsAssumed: {"its size is in pixels, taken as 96 to the inch; --units says otherwise"},
	found.MirrorOpened:  {"the half was opened at its mirror line and is laid whole"},
	found.SewLineKept: {"its sew line keeps no even distance from one edge, whose allowance is therefore unknown",
		"its sew line keeps no even distance from {count} edges, whose allowance is therefore unknown"},
	found.NotchMoved: {"a notch lay {size} off the outline and was moved onto it",
		"{count} notches lay up to {size} off the " +
			"outline and were moved onto it"},
	found.NotchLost: {"a notch lies too far from any edge and was left out",
		"{count} notches lie too far from any edge " +
			"and were left out"},
	found.SquaresSeen:   {"the squares of the ground are seen {what}"},
	found.SheetsSeen:    {"a sheet is seen: what lies far from it is less accurate", "{count} sheets are seen"},
	found.PhotoAccuracy: {"its outline is traced to within {size}, and is laid so much larger"},
	found.ShapeLeft:     {"left out: {what}"},
	found.LeftOnes:      {"it is cut once for the left, as drawn", "it is cut {count} times for the left, as drawn"},
	found.RightOnes: {"it is cut once for the right, the mirror image of what is drawn",
		"it is cut {count} times for the right, the mirror image of what is drawn"},
	found.PairTaken: {"", "{count} are cut, and it is not its own mirror image, so half of them are cut mirrored: one " +
		"right, one left; --pair no cuts all the same way up"},
	found.RenamedTwin: {"another piece has the same name, so it is named {what}"},
}

// Found says what was done to what was found, for lengths in a system of units.
func Found(notes []found.Note, system measure.System) []string {
	var out []string
	for _, n := range notes {
		forms, known := noteWords[n.Kind]
		if !known {
			continue
		}
		form := forms[0]
		if n.Count > 1 && forms[1] != "" {
			form = forms[1]
		}
		size := fine(n.Size, system)
		if n.Kind == found.PhotoAccuracy {
			size = system.Accuracy(n.Size)
		}
		text := strings.NewReplacer("{count}", strconv.Itoa(n.Count), "{size}", size, "{what}", n.What).Replace(form)
		if n.Piece > 0 {
			text = fmt.Sprintf("piece %d: %s", n.Piece, text)
		}
		out = append(out, strings.ToUpper(text[:1])+text[1:]+".")
	}
	return out
}

// fine says a small length, which is rounded to no nothing.
func fine(mm float64, system measure.System) string {
	if mm < 1 {
		return fmt.Sprintf("%.2g mm", mm)
	}
	return system.Size(mm)
}

// questionWords are what is missing, and how it is answered.
var questionWords = map[found.Question]string{
	found.AskName: "its name", found.AskCut: "how many are cut", found.AskGrain: "its grain",
	found.AskAllowance: "what its outline has of the seam allowance",
	found.AskFold:      "which of its sides lies on the fold, as its words say",
}

// Unanswered says all that is missing of pieces that were found, and how to say it.
func Unanswered(u *app.Unanswered) string {
	var lines []string
	asked, fold := map[found.Question]int{}, ""
	for _, lack := range u.List {
		var words []string
		for _, q := range lack.Questions {
			text := questionWords[q]
			if q == found.AskFold && lack.Fold != "none" {
				text += " (" + lack.Fold + " is its longest straight one)"
			}
			words = append(words, text)
			if asked[q] > 0 {
				continue
			}
			if asked[q] = lack.Number; q == found.AskFold {
				fold = lack.Fold
			}
		}
		lines = append(lines, fmt.Sprintf("piece %s: %s", numberAndName(lack.Number, lack.Name),
			strings.Join(words, ", ")))
	}
	example := map[found.Question]string{found.AskName: `--name %d=front`, found.AskCut: `--cut %d=2`,
		found.AskGrain: `--grain up`, found.AskAllowance: `--allowance "included 1.5 cm"`, found.AskFold: `--fold %d=` + fold}
	var give []string
	for _, q := range []found.Question{found.AskName, found.AskCut, found.AskGrain, found.AskFold, found.AskAllowance} {
		if number := asked[q]; number > 0 {
			text := example[q]
			if strings.Contains(text, "%d") {
				text = fmt.Sprintf(text, number)
			}
			give = append(give, text)
		}
	}
	return "the drawing does not say:\n" + strings.Join(lines, "\n") +
		"\nsay it, for one piece by its number or for all: " +
		strings.Join(give, " ") + "; or leave pieces out with --piece"
}

func numberAndName(number int, name string) string {
	if name == "" {
		return strconv.Itoa(number)
	}
	return fmt.Sprintf("%d (%s)", number, name)
}

// FoundFault says why no piece can be made of what was found, and what to do.
func FoundFault(f *app.FoundFault, system measure.System) language.Sentence {
	var crossing *found.Crossing
	var gap *found.Gap
	var area *found.NoArea
	var fold *found.NoFoldThere
	what := language.OfError(piecewords.Refused(f.Err))
	switch place := func(x, y float64) language.Sentence {
		return language.Say("%s across and %s up", "%s nach rechts und %s nach oben", system.Size(x), system.Size(y))
	}; {
	case errors.As(f.Err, &crossing):
		what = language.Say("its outline crosses itself %s from the origin of the drawing; --picture found.png shows where. "+
			"Correct the drawing, or leave the piece out with --piece",
			"sein Umriss kreuzt sich %s vom Ursprung der Zeichnung. "+
				"Berichtigen Sie die Zeichnung, oder lassen Sie das Teil weg", place(crossing.At[0], crossing.At[1]))
	case errors.As(f.Err, &gap):
		what = language.Say("its outline is open %s from the origin of the drawing, by %s; --gap joins ends that are "+
			"further apart", "sein Umriss ist %s vom Ursprung der Zeichnung offen, um %s", place(gap.At[0],
			gap.At[1]), fine(gap.Size, system))
	case errors.As(f.Err, &area):
		what = language.Say("its outline encloses no area; leave it out with --piece",
			"sein Umriss umschließt keine Fläche; lassen Sie es weg")
	case errors.As(f.Err, &fold):
		what = language.Say("it has no straight edge on the side that --fold names",
			"es hat auf der Seite, die im Stoffbruch liegen soll, keine gerade Kante")
	}
	return language.Say("piece %s: %s", "Teil %s: %s", numberAndName(f.Number, f.Name), what)
}

// asking is how each question is put on a terminal.
var asking = map[found.Question]string{
	found.AskName: "name: ", found.AskCut: "how many are cut for one garment: ",
	found.AskGrain:     "grain in the drawing (up, across, bias, either): ",
	found.AskAllowance: "seam allowance of the outline (included 1.5 cm; 1.5 cm to be added; unknown): ",
	found.AskPair:      "a pair, half of them mirrored (yes, no; Enter for yes where it is not its own mirror image): ",
	found.AskFold:      "side on the fold (left, right, top, bottom; Enter for none): ",
	found.AskCloth:     "cloth (Enter for the garment's): ",
	found.AskSize:      "size (Enter for every size): ",
}

// Ask puts a question.
func Ask(q found.Question) string { return asking[q] }

// Asked is the piece that questions are about.
func Asked(f app.Found, system measure.System) string {
	across, up := f.Extent()
	return fmt.Sprintf("piece %s, %s across and %s up in the drawing", numberAndName(f.Number, f.Name),
		system.Size(across),
		system.Size(up))
}
