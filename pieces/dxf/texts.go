package dxf

import (
	"fmt"
	"strconv"
	"strings"

	"ellwand/pieces"
	"ellwand/pieces/found"
)

// Keys of texts, by ASTM D6673 [source.D6673].
const (
	pieceNameKey  = "Piece Name"
	sizeKey       = "Size"
	quantityKey   = "Quantity"
	materialKey   = "Material"
	categoryKey   = "Category"
	annotationKey = "Annotation"
	styleNameKey  = "Style Name"
	sampleSizeKey = "Sample Size"
	unitsKey      = "Units"
)

// Annotations of ours.
const (
	eitherGrain = "Grain: either"
	accuracy    = "Accuracy: "
)

// silentKeys are read over without a word.
var silentKeys = []string{"creation date", "creation time", "author", "product", "version", "rule table",
	"grade rule table", "grading rule table", "ascii", "size range", sampleSizeKey, unitsKey, styleNameKey}

// keyed parts a text into its key and its value.
func keyed(words string) (key, value string, ok bool) {
	key, value, ok = strings.Cut(words, ":")
	return strings.TrimSpace(key), strings.TrimSpace(value), ok
}

func isKey(key, known string) bool { return strings.EqualFold(key, known) }

// unitOf the words after Units.
func unitOf(words string) float64 {
	switch strings.ToUpper(words) {
	case "METRIC":
		return 1
	case "ENGLISH":
		return 25.4
	}
	return 0
}

// say gives a piece what a text says of it; false where it is not understood.
func say(p *found.Piece, key, value string) bool {
	switch {
	case isKey(key, pieceNameKey):
		p.Name = value
	case isKey(key, sizeKey):
		p.Size = value
	case isKey(key, materialKey):
		p.Material = value
	case isKey(key, categoryKey):
		p.Category = value
	case isKey(key, annotationKey):
		annotate(p, value)
	case isKey(key, quantityKey):
		return quantity(p, value)
	default:
		for _, known := range silentKeys {
			if isKey(key, known) {
				return true
			}
		}
		return false
	}
	return true
}

func annotate(p *found.Piece, words string) {
	if words == eitherGrain {
		p.Lie = pieces.EitherGrain
		return
	}
	if text, ours := strings.CutPrefix(words, accuracy); ours {
		if mm, err := strconv.ParseFloat(strings.TrimSuffix(text, " mm"), 64); err == nil && mm > 0 && mm < 100 {
			p.Accuracy = mm
			return
		}
	}
	p.Texts = append(p.Texts, found.Text{Words: words})
}

// quantity is how many are cut, or how many for the left, as drawn, and for the right,
// mirrored [source.D6673].
func quantity(p *found.Piece, words string) bool {
	const most = 1000
	left, right, both := strings.Cut(words, ",")
	a, err := strconv.Atoi(strings.TrimSpace(left))
	if err != nil || a < 0 || a > most {
		return false
	}
	if !both {
		p.Cut = a
		return a > 0
	}
	b, err := strconv.Atoi(strings.TrimSpace(right))
	if err != nil || b < 0 || b > most || a+b == 0 {
		return false
	}
	p.Cut, p.AsDrawn, p.Mirrored = 0, a, b
	return true
}

// quantityOf a piece: by sides where a mere number would be read as right ones and left ones.
func quantityOf(p pieces.Piece) string {
	switch {
	case p.Pair:
		return fmt.Sprintf("%d,%d", p.Cut/2, p.Cut/2)
	case p.Cut%2 == 0 && !p.IsOwnImage(true):
		return fmt.Sprintf("%d,0", p.Cut)
	}
	return strconv.Itoa(p.Cut)
}
