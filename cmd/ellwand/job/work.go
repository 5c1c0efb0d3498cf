package job

import (
	"fmt"
	"slices"

	"ellwand/cmd/ellwand/strict"
	"ellwand/draft"
	"ellwand/draft/construct"
	"ellwand/fabric/cloth"
	"ellwand/fabric/quote"
	"ellwand/fabric/remnant"
	"ellwand/pieces"
	"ellwand/pieces/language"
	"ellwand/pieces/measure"
	"ellwand/pieces/safety"
	"ellwand/pieces/text"
)

// Work is a job ready to be laid: its pieces drafted, its cloths known.
type Work struct {
	File         string // the job file, for messages
	Name, Client string
	Unit         measure.Unit
	// Size of a table that it is drafted in, as the file names it; may be empty.
	Size string
	// Body is what the pieces were drafted from; empty when nothing is.
	Body draft.Body
	// Youngest of those who wear the garments.
	Youngest safety.Wearer
	// Derived are the measurements of Body that were not given.
	Derived Derived
	// Wearers by their names, when there are several bodies.
	Wearers []string
	// Garments in the order of the file, each once, whatever its quantity.
	Garments []Made
	// Cloths that the job offers, in the order of the file.
	Cloths []Goods
	// Currency of every price; the zero one when the job has none.
	Currency quote.Currency
	// Quote is what the job says for a quote: all but its cloths, garments,
	// units and heading. ValidDays, when above 0, stands for ValidUntil.
	Quote     quote.Request
	ValidDays int
	// Shortenings are the parts of the garments that can be drafted shorter.
	Shortenings []Shortening
	// Questions about what is most likely a slip.
	Questions []Question
	// Notes of the draft, each a sentence.
	Notes []language.Sentence

	file *File
}

// Made is one kind of garment with all its pieces.
type Made struct {
	Name string // "dress, Imke" when there are several wearers
	// Kind is the garment's name in the file, and Wearer whom it is for;
	// Wearer may be empty.
	Kind, Wearer string
	Quantity     int
	// Pieces of one garment, drafted ones first.
	Pieces []pieces.Piece
	// Replaced names drafted pieces in whose place those of a pattern are.
	Replaced []string
	// FromPattern are the names that pieces of a pattern have in its file, by those that they
	// have here.
	FromPattern map[string]string
	// Truing of the drafted pieces; no rows when nothing was drafted.
	Truing draft.Report
	// Figures of the draft that a pattern maker asks for.
	Figures []draft.Figure
	// Body that it was drafted for, with what was derived; and the drafts
	// step by step. Both empty when nothing was drafted.
	Body   draft.Body
	Sheets []construct.Sheet
	// Derived are the measurements of Body that were not given.
	Derived Derived
}

// Derived says of measurements that were not given by which rule each was
// derived.
type Derived map[draft.Measurement]construct.Sentence

// Goods are a cloth in the widths to consider. Cloth.Width is not set.
type Goods struct {
	Cloth  cloth.Cloth
	Widths []float64 // full widths, mm; at least one
	// Length of the cloth that is there already, mm; 0 when it is to be
	// bought.
	Length float64
	// Remnants are the pieces of the cloth that are there already, when they
	// are several or not rectangles. May be empty.
	Remnants []remnant.Offcut
	// Straightened says that the job gives what straightening the cut ends takes,
	// be it nothing.
	Straightened bool
	// Measured says that its width was measured on the cloth itself.
	Measured bool
	// Offers are the priced ways to buy it; none when the job has no price.
	Offers []quote.Offer
}

// AtCloth is where in the job file a cloth stands: "blouse.yaml:7". Of one that
// is not there it is the file.
func (w Work) AtCloth(name string) string {
	for i, offer := range w.Cloths {
		if offer.Cloth.Name != name || w.file == nil {
			continue
		}
		if line := w.file.lines.Of(strict.Top("cloths").Entry(i)); line > 0 {
			return fmt.Sprintf("%s:%d", w.File, line)
		}
	}
	return w.File
}

// note keeps a sentence once, however many garments give rise to it.
func (w *Work) note(sentence language.Sentence) {
	same := func(other language.Sentence) bool { return other.String() == sentence.String() }
	if !slices.ContainsFunc(w.Notes, same) {
		w.Notes = append(w.Notes, sentence)
	}
}

// Title is the job with its client: "Wren blouse for Oda Marchetti".
func (w Work) Title() string {
	if w.Client == "" {
		return w.Name
	}
	return w.Name + " for " + w.Client
}

// InInches reports whether the job is written in inches and yards.
func (w Work) InInches() bool { return w.Unit.System() == measure.Imperial }

// Format prints a length as people of the job's units say the size of a piece
// or of a cloth's width: in cm or in.
func (w Work) Format(length float64) string { return w.Unit.System().Size(length) }

// FormatLong prints a length of cloth: in m, or in inches, since a yard's
// eighths are too coarse for it.
func (w Work) FormatLong(length float64) string { return w.Unit.System().Cloth(length) }

// FormatAtLeast prints a length of cloth that no lay is shorter than: as FormatLong, but
// never more than it is.
func (w Work) FormatAtLeast(length float64) string { return w.Unit.System().ClothAtLeast(length) }

// PiecesOf returns every piece that is cut from a cloth. A garment that is
// made several times has each piece once a garment, so that its nap may bind
// the garment alone: "blouse 1", "blouse 2".
func (w Work) PiecesOf(cloth string) []pieces.Piece {
	var out []pieces.Piece
	for _, made := range w.Garments {
		for i := range made.Quantity {
			for _, piece := range made.Pieces {
				if piece.Cloth != cloth {
					continue
				}
				piece.Garment = made.numbered(i + 1)
				out = append(out, piece)
			}
		}
	}
	return out
}

// Slug makes a file name of a name: letters and digits of any script in lower
// case, a hyphen for whatever else stands between them.
func Slug(name string) string { return text.FileName(name) }

// Shortening is a part of a garment that can be drafted shorter.
type Shortening struct {
	Garment string // as the file names it
	Part    string // "whole", "skirt", "trousers", "sleeve" or what the part is called
	Length  float64
	path    Path // of the garment
	// At is the path of its length in the job.
	At Path
}

// numbered names one of the garments that are made of a kind.
func (m Made) numbered(copy int) string {
	if m.Quantity == 1 {
		return m.Name
	}
	return fmt.Sprintf("%s %d", m.Name, copy)
}
