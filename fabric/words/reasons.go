package words

import (
	"errors"
	"maps"

	"ellwand/fabric/cloth"
	"ellwand/fabric/lay"
	"ellwand/pieces"
	"ellwand/pieces/language"
	"ellwand/pieces/role"
	piecewords "ellwand/pieces/words"
)

// WhyNot says why a lay cannot be, and what would help: a line for each reason. Empty
// when it can.
func WhyNot(p lay.Plan) string { return Why(p).String() }

// Why is WhyNot in every language.
func Why(p lay.Plan) language.Sentence { return language.Join("\n", ReasonLines(p.Cloth, p.Why)...) }

// Reasons on a cloth, a line each, after the pieces that stand in the way for it.
func Reasons(c cloth.Cloth, all []lay.Reason) string {
	return language.Join("\n", ReasonLines(c, all)...).String()
}

// ReasonLines are those lines.
func ReasonLines(c cloth.Cloth, all []lay.Reason) []language.Sentence {
	var shared Shared
	for _, r := range all {
		shared.Add(role.Called(r.Piece), Reason(c, r))
	}
	return shared.Lines()
}

// Refused is an error about a cloth in words for people: its reasons and refusals as
// sentences, everything else as it is. It unwraps to the error; nil stays nil.
func Refused(c cloth.Cloth, err error) error {
	if err == nil {
		return nil
	}
	return refused{err, sentence(c, err)}
}

// refused is an error and what people read of it.
type refused struct {
	error
	said language.Sentence
}

func (r refused) Error() string { return r.said.String() }

// Said is that in every language.
func (r refused) Said() language.Sentence { return r.said }

func (r refused) Unwrap() error { return r.error }

// sentence of an error: of several that were joined, each once, after all that it is
// about.
func sentence(c cloth.Cloth, err error) language.Sentence {
	var shared Shared
	addEach(&shared, c, err)
	return language.Join("\n", shared.Lines()...)
}

func addEach(to *Shared, c cloth.Cloth, err error) {
	switch one := err.(type) {
	case lay.Reason:
		to.Add(role.Called(one.Piece), Reason(c, one))
	case lay.Refusal:
		to.Add(language.Sentence{}, noLay(one))
	case cloth.Fault:
		to.Add(language.Name(one.Cloth), Faulty(c, one))
	case pieces.Fault:
		to.Add(piecewords.About(one), piecewords.Faulty(one))
	case interface{ Unwrap() []error }:
		if !isJoined(err, one.Unwrap()) {
			to.Add(language.Sentence{}, language.OfError(err))
			return
		}
		for _, each := range one.Unwrap() {
			addEach(to, c, each)
		}
	default:
		to.Add(language.Sentence{}, language.OfError(err))
	}
}

// isJoined tells errors that were joined, a line each, from a sentence about several.
func isJoined(err error, parts []error) bool { return err.Error() == errors.Join(parts...).Error() }

// noLay says why no lay is possible. What fits no open cloth fits none that is folded:
// the reasons of the other lays would only bury it.
func noLay(r lay.Refusal) language.Sentence {
	if one := r.Plans[0]; len(r.Plans) == 1 && one.Lay != lay.Open {
		return language.Say("it cannot be laid %s: %s", "%s lässt es sich nicht auflegen: %s",
			one.Lay.WayWords(), Why(one))
	}
	var lines []language.Sentence
	for _, p := range r.Plans {
		line := language.Say("%s: %s", "%s: %s", p.Lay, Why(p))
		if p.Lay == lay.Open {
			lines = []language.Sentence{line}
			break
		}
		lines = append(lines, line)
	}
	return language.Say("no lay of %s is possible:\n%s", "keine Lage von %s ist möglich:\n%s",
		clothNamed(r.Cloth), language.Join("\n", lines...))
}

// Reason says why something cannot be laid, and what would help, without the piece that
// stands in the way.
func Reason(c cloth.Cloth, r lay.Reason) language.Sentence {
	if say, known := explained[r.Of]; known {
		return say(c, r)
	}
	return language.Name(r.Error())
}

// sentenceOf a reason on a cloth.
type sentenceOf func(c cloth.Cloth, r lay.Reason) language.Sentence

// explained are the sentences of each obstacle.
var explained = map[lay.Obstacle]sentenceOf{
	lay.Told: func(_ cloth.Cloth, r lay.Reason) language.Sentence { return language.Name(r.Text) },
}

// explain obstacles by their sentences.
func explain(sentences map[lay.Obstacle]sentenceOf) bool {
	maps.Copy(explained, sentences)
	return true
}

// always the same sentence.
func always(english, german string) sentenceOf {
	return func(cloth.Cloth, lay.Reason) language.Sentence { return language.Say(english, german) }
}
