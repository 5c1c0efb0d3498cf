package desk

import (
	"math"
	"strconv"
	"strings"

	"ellwand/cmd/ellwand/page/edit"
	"ellwand/cmd/ellwand/strict"
	"ellwand/pieces/measure"
)

// Placing is a piece in a lay, and where a hand lays it.
type Placing struct {
	Cloth string `json:"cloth"`
	Width string `json:"width"`
	Lay   string `json:"lay"`
	// Piece by its PieceID; none are all of the lay, which only Free takes.
	Piece *string `json:"piece"`
	// At, mm in the frame of the lay, Turn in degrees against the clock, and whether it
	// lies face down and on the fold. What is not given is as the piece lies now.
	At       *[2]float64 `json:"at,omitempty"`
	Turn     *float64    `json:"turn,omitempty"`
	Mirrored *bool       `json:"mirrored,omitempty"`
	OnFold   *bool       `json:"on_fold,omitempty"`
	// OnOpen says that it lies on the open part of a lay of two; where it is not said, the
	// part that it is held over. FoldedIn, mm, is how far a selvedge is folded in there, if
	// one is.
	OnOpen   *bool   `json:"on_open,omitempty"`
	FoldedIn float64 `json:"-"`
	// Locked is taken for granted: what a hand lays stays.
	Locked *bool `json:"locked,omitempty"`
}

// spotIn is where in a text what was laid by hand on a spot stands, or is to stand.
func spotIn(text string, p Placing) (path strict.Path, stands bool, err error) {
	cloth := -1
	for i := range edit.Len(text, strict.Top("cloths")) {
		if name, _ := edit.Get(text, strict.Top("cloths").Entry(i).Key("name")); name == p.Cloth {
			cloth = i
		}
	}
	width, err := strconv.ParseFloat(strings.TrimSuffix(p.Width, "mm"), 64)
	if cloth < 0 || err != nil {
		return nil, false, errNoPiece
	}
	list := strict.Top("cloths").Entry(cloth).Key("laid_by_hand")
	entries := edit.Len(text, list)
	for i := range entries {
		at := list.Entry(i)
		kind, given := edit.Get(text, at.Key("lay"))
		if !given {
			kind = usualLay
		}
		written, _ := edit.Get(text, at.Key("width"))
		mm, err := measure.Parse(written, unitOf(text))
		if err == nil && math.Abs(float64(mm)-width) < sameWidth && strict.Plain(kind) == strict.Plain(p.Lay) {
			return at, true, nil
		}
	}
	return list.Entry(entries), false, nil
}

const (
	usualLay  = "open"
	sameWidth = 0.05 // mm [source.OwnChoice]
)

// unitOf the numbers of a job; cm where it does not say.
func unitOf(text string) measure.Unit {
	written, _ := edit.Get(text, strict.Top("units"))
	unit, err := measure.ParseUnit(written)
	if err != nil {
		return measure.Centimetre
	}
	return unit
}

// exactly writes a length so that it is read to a hundred-thousandth of a millimetre.
func exactly(mm float64, unit measure.Unit) string {
	size := map[measure.Unit]float64{measure.Centimetre: 10, measure.Inch: 25.4}[unit]
	if size == 0 {
		size = 1
	}
	return strconv.FormatFloat(math.Round(mm/size*1e6)/1e6, 'f', -1, 64)
}

// pieceIn is the entry of a piece below a spot.
func pieceIn(text string, spot strict.Path, id PieceID) (path strict.Path, stands bool) {
	list := spot.Key("pieces")
	entries := edit.Len(text, list)
	for i := range entries {
		at := list.Entry(i)
		get := func(key string) string { value, _ := edit.Get(text, at.Key(key)); return value }
		number := get("copy")
		if number == "" {
			number = "1"
		}
		if get("piece") == id.Name && get("garment") == id.Garment && get("size") == id.Size &&
			number == strconv.Itoa(id.Copy) {
			return at, true
		}
	}
	return list.Entry(entries), false
}

// placed is a text with a piece laid by hand.
func placed(text string, p Placing) (string, error) {
	if p.Piece == nil || p.At == nil || p.Turn == nil {
		return "", errNoPiece
	}
	id, err := ParsePieceID(*p.Piece)
	if err != nil {
		return "", err
	}
	spot, stands, err := spotIn(text, p)
	if err != nil {
		return "", err
	}
	entry := entryOf(p, id, unitOf(text))
	if stands {
		at, _ := pieceIn(text, spot, id)
		return edit.Set(text, at, entry, Order)
	}
	width, _ := strconv.ParseFloat(strings.TrimSuffix(p.Width, "mm"), 64)
	keys := []edit.Pair{
		{Key: "width", Value: edit.Text(exactly(width, unitOf(text)))}, {Key: "lay", Value: edit.Text(p.Lay)},
	}
	if p.FoldedIn > 0 {
		keys = append(keys, edit.Pair{Key: "folded_in", Value: edit.Text(exactly(p.FoldedIn, unitOf(text)))})
	}
	keys = append(keys, edit.Pair{Key: "pieces", Value: edit.Value{List: []edit.Value{entry}}})
	return edit.Set(text, spot, edit.Value{Keys: keys}, Order)
}

// entryOf a piece as the file has it.
func entryOf(p Placing, id PieceID, unit measure.Unit) edit.Value {
	out := edit.Value{Keys: []edit.Pair{{Key: "piece", Value: edit.Text(id.Name)}}}
	add := func(key, value string, given bool) {
		if given {
			out.Keys = append(out.Keys, edit.Pair{Key: key, Value: edit.Text(value)})
		}
	}
	add("garment", id.Garment, id.Garment != "")
	add("size", id.Size, id.Size != "")
	add("copy", strconv.Itoa(id.Copy), true)
	at := []edit.Value{edit.Text(exactly(p.At[0], unit)), edit.Text(exactly(p.At[1], unit))}
	out.Keys = append(out.Keys, edit.Pair{Key: "at", Value: edit.Value{List: at}})
	turn := math.Mod(math.Mod(math.Round(*p.Turn*1e6)/1e6, 360)+360, 360)
	add("turn", strconv.FormatFloat(turn, 'f', -1, 64), turn != 0)
	add("face_down", "yes", p.Mirrored != nil && *p.Mirrored)
	add("on_fold", "yes", p.OnFold != nil && *p.OnFold)
	add("on_open", "yes", p.OnOpen != nil && *p.OnOpen)
	return out
}

// freed is a text in which a piece, or all of a lay, is not laid by hand any more.
func freed(text string, p Placing) (string, error) {
	spot, stands, err := spotIn(text, p)
	if err != nil || !stands {
		return text, err
	}
	if p.Piece == nil {
		return edit.Unset(text, spot)
	}
	id, err := ParsePieceID(*p.Piece)
	if err != nil {
		return "", err
	}
	at, there := pieceIn(text, spot, id)
	if !there {
		return text, nil
	}
	if edit.Len(text, spot.Key("pieces")) == 1 {
		return edit.Unset(text, spot)
	}
	return edit.Unset(text, at)
}
