package job

import (
	"reflect"
	"strings"
	"testing"

	"github.com/stretchr/testify/assert"
	"github.com/stretchr/testify/require"

	"ellwand/cmd/ellwand/strict"
	"ellwand/draft/bodice"
	"ellwand/draft/part"
	"ellwand/draft/skirt"
	"ellwand/draft/sleeve"
	"ellwand/draft/straightcut"
	"ellwand/draft/subject"
	"ellwand/draft/trousers"
	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/found"
	"ellwand/pieces/measure"
)

// meanings has every word of every choice with what it means.
var meanings = []struct {
	word string
	want any
}{
	{"measured", bodice.Measured}, {"proportional", bodice.Proportional},
	{"close", bodice.Close}, {"easy", bodice.Easy}, {"shirt", bodice.Shirt},
	{"side", bodice.SideDart}, {"shoulder", bodice.ShoulderDart}, {"armhole", bodice.ArmholeDart}, {"none", bodice.NoDart},
	{"none", bodice.NoPrincess}, {"shoulder", bodice.FromShoulder}, {"armhole", bodice.FromArmhole},
	{"seam", backSeam}, {"fold", backFold}, {"opening", backOpening},
	{"fold", frontFold}, {"opening", frontOpening},
	{"set-in", sleeve.SetIn}, {"shirt", sleeve.Shirt}, {"two-piece", sleeve.TwoPiece}, {"cap", sleeve.Cap},
	{"full", sleeve.Full}, {"elbow", sleeve.Elbow}, {"short", sleeve.Short},
	{"straight", skirt.Straight}, {"a-line", skirt.ALine}, {"gored", skirt.Gored},
	{"full circle", skirt.FullCircle}, {"three-quarter circle", skirt.ThreeQuarterCircle}, {"half circle",
		skirt.HalfCircle},
	{"quarter circle", skirt.QuarterCircle}, {"tiered", skirt.Tiered}, {"knife pleated",
		skirt.KnifePleated}, {"box pleated", skirt.BoxPleated},
	{"seam", skirtSeam}, {"fold", skirtFold},
	{"waist", toWaist}, {"hem", toHem},
	{"fly", trousers.Fly}, {"side zip", trousers.SideZip}, {"elastic waist", trousers.ElasticWaist},
	{"none", trousers.NoPocket}, {"side", trousers.SidePocket}, {"patch", trousers.PatchPocket},
	{"kaftan", straightcut.Kaftan}, {"kimono", straightcut.Kimono}, {"wrapper", straightcut.Wrapper}, {"apron",
		straightcut.Apron}, {"bag", straightcut.Bag},
	{"collar", part.Collar}, {"neck facing", part.NeckFacing}, {"cuff", part.Cuff}, {"waistband", part.Waistband},
	{"shaped waistband", part.ShapedWaistband}, {"gathered skirt", part.GatheredSkirt}, {"straight panel",
		part.StraightPanel},
	{"shirt collar", part.ShirtCollar}, {"flat collar", part.FlatCollar}, {"mandarin collar", part.MandarinCollar},
	{"buttoned cuff", part.ButtonedCuff}, {"sleeve placket", part.SleevePlacket}, {"armhole facing", part.ArmholeFacing},
	{"neck and armhole facing", part.CombinedFacing}, {"facing", part.Facing}, {"belt", part.Belt}, {"tie", part.Tie},
	{"bias strip", part.BiasStrip}, {"patch pocket", part.PatchPocket}, {"pocket bag", part.PocketBag},
	{"lengthwise", part.Lengthwise}, {"crosswise", part.Crosswise}, {"either", part.Either},
	{"square", part.Square}, {"pointed", part.Pointed}, {"round", part.Round},
	{"straight", pieces.StraightGrain}, {"cross", pieces.CrossGrain}, {"bias", pieces.Bias},
	{"either", pieces.EitherGrain},
	{"shell", pieces.Shell}, {"facing", pieces.Facing}, {"lining", pieces.Lining}, {"interfacing", pieces.Interfacing},
	{"as found", found.FoldAsFound}, {"none", found.NoFold}, {"left", found.LeftSide}, {"right", found.RightSide},
	{"top", found.TopSide}, {"bottom", found.BottomSide},
	{"as found", found.GrainAsFound}, {"up", found.GrainUp}, {"across", found.GrainAcross}, {"bias", found.GrainBias},
	{"either", found.GrainEither},
	{"either way", cloth.EitherWay}, {"one way", cloth.OneWay}, {"one way per garment", cloth.OneWayPerGarment},
	{"unknown", cloth.UnknownFibre}, {"cotton", cloth.Cotton}, {"linen", cloth.Linen}, {"viscose", cloth.Viscose},
	{"wool", cloth.Wool}, {"polyester", cloth.Polyester},
	{"near", cloth.Near}, {"far", cloth.Far},
	{"open", lay.Open}, {"folded along the warp", lay.FoldedAlong}, {"folded across the weft", lay.FoldedAcross},
	{"cut across and turned", lay.CutAcross}, {"one selvedge folded in", lay.SelvedgeIn},
	{"both selvedges to the middle", lay.BothSelvedgesIn}, {"part folded, part open", lay.InStretches},
	{"mm", measure.Millimetre}, {"cm", measure.Centimetre}, {"m", measure.Metre}, {"in", measure.Inch}, {"yd",
		measure.Yard},
}

// Two words of a choice that are exchanged, or one that has no meaning here,
// are seen.
func TestWordsAndTheirMeanings(t *testing.T) {
	seen := map[reflect.Type]int{}
	for _, m := range meanings {
		words := m.want.(strict.Worded).Words()
		value := reflect.ValueOf(m.want)
		at := seen[value.Type()]
		require.Greater(t, len(words), at)
		assert.Equal(t, m.word, words[at], "%T", m.want)
		if value.CanInt() {
			assert.EqualValues(t, at, value.Int(), "%T %s", m.want, m.word)
		} else {
			assert.Equal(t, m.word, value.String())
		}
		seen[value.Type()]++
	}
	for kind, n := range seen {
		assert.Len(t, reflect.Zero(kind).Interface().(strict.Worded).Words(), n, kind)
	}
	for choice := range choicesOf(reflect.TypeFor[File](), map[reflect.Type]bool{}) {
		words := reflect.Zero(choice).Interface().(strict.Worded).Words()
		assert.True(t, isKnown(words), "the words of %s have no meanings here: %v", choice, words)
	}
}

// isKnown says that the words are those of one of the meanings.
func isKnown(words []string) bool {
	for _, m := range meanings {
		if reflect.DeepEqual(m.want.(strict.Worded).Words(), words) {
			return true
		}
	}
	return false
}

// choicesOf finds every type of choice in the types of the job file.
func choicesOf(t reflect.Type, found map[reflect.Type]bool) map[reflect.Type]bool {
	switch t.Kind() {
	case reflect.Pointer, reflect.Slice, reflect.Map:
		return choicesOf(t.Elem(), found)
	case reflect.Struct:
		for i := range t.NumField() {
			if t.Field(i).Tag.Get("yaml") != "" {
				choicesOf(t.Field(i).Type, found)
			}
		}
	case reflect.String:
		if strict.ChoiceSchema(t) != nil {
			found[t] = true
		}
	}
	return found
}

// A description that lists the words lists all of them, and names the usual one.
func TestDescriptionsNameTheUsualWord(t *testing.T) {
	eachChoice(reflect.TypeFor[File](), func(field reflect.StructField, words []string) {
		said := strict.DescriptionOf(field)
		if _, listed, found := strings.Cut(said, " if not given"); found && listed == "" {
			assert.True(t, strings.HasSuffix(said, words[0]+" if not given"), "%s: %s", field.Name, said)
		}
	})
}

func eachChoice(t reflect.Type, do func(reflect.StructField, []string)) {
	for t.Kind() == reflect.Pointer || t.Kind() == reflect.Slice || t.Kind() == reflect.Map {
		t = t.Elem()
	}
	if t.Kind() != reflect.Struct {
		return
	}
	for i := range t.NumField() {
		field := t.Field(i)
		if field.Tag.Get("yaml") == "" {
			continue
		}
		if strict.ChoiceSchema(field.Type) != nil {
			do(field, reflect.Zero(field.Type).Interface().(strict.Worded).Words())
		}
		eachChoice(field.Type, do)
	}
}

// The fits ease the bust more and more: easy by 4 cm more than close, as its
// description promises, and a shirt, which hangs straight as well, by more.
func TestFitsEaseTheBust(t *testing.T) {
	around := map[string]float64{}
	for _, fit := range strict.WordsOf[bodice.Fit]() {
		work, err := resolve(t, onBlouse("    bodice: {fit: "+fit+"}\n"))
		require.NoError(t, err)
		for _, piece := range work.Garments[0].Pieces {
			box := piece.SeamOutline(0.1).Bound()
			around[fit] += 2 * (box.Max[0] - box.Min[0])
		}
	}
	assert.InDelta(t, 40, around["easy"]-around["close"], 4)
	assert.Greater(t, around["shirt"]-around["easy"], 40.0)
}

// Every option that a draft can be refused for has a key, and each key is one
// of a block.
func TestOptionsHaveKeys(t *testing.T) {
	known := map[string]bool{}
	for _, block := range []reflect.Type{
		reflect.TypeFor[Bodice](), reflect.TypeFor[Sleeve](), reflect.TypeFor[Skirt](), reflect.TypeFor[Trousers](),
		reflect.TypeFor[StraightCut](), reflect.TypeFor[Part](), reflect.TypeFor[Lining](), reflect.TypeFor[Interfacing](),
	} {
		for _, key := range strict.Names(block) {
			known[key] = true
		}
	}
	seen := map[string]bool{}
	for _, s := range subject.Options() {
		key := options[s]
		assert.True(t, known[key], "no block has the key %q of option %d", key, s)
		assert.False(t, seen[key], "%q stands twice", key)
		seen[key] = true
	}
	assert.Len(t, options, len(subject.Options()))
}
