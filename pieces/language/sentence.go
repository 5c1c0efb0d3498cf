package language

import (
	"fmt"
	"regexp"
	"strings"
)

// Sentence is what is said, or a phrase of it, in every language.
type Sentence struct {
	words [count]string
	args  []any
}

// Worded is what has words of its own in each language. Among the values of a Sentence it
// is worded as the Sentence is.
type Worded interface{ In(Language) string }

// Say makes a sentence by the rules of fmt.Sprintf: the same values in the words of each
// language.
func Say(english, german string, args ...any) Sentence {
	return Sentence{[count]string{English: english, German: german}, args}
}

// Name is a text that is the same in every language: what people call something.
func Name(text string) Sentence { return Say("%s", "%s", text) }

// Pair is a word in each language.
func Pair(english, german string) Sentence {
	return Say("%[1]s", "%[2]s", english, german)
}

// Its says something about what the sentence names: "cloth shell: the width".
func (s Sentence) Its(english, german string, args ...any) Sentence {
	return Say("%s: %s", "%s: %s", s, Say(english, german, args...))
}

// IsEmpty says that nothing is said.
func (s Sentence) IsEmpty() bool { return s.words == [count]string{} }

// String is the sentence in English.
func (s Sentence) String() string { return s.In(English) }

// In words the sentence in a language, its numbers in the way of that language.
func (s Sentence) In(l Language) string {
	if s.IsEmpty() {
		return ""
	}
	args := make([]any, len(s.args))
	for i, arg := range s.args {
		args[i] = worded(arg, l)
	}
	if l == English {
		return fmt.Sprintf(s.words[l], args...)
	}
	return l.printer().Sprintf(quotations.ReplaceAllString(s.words[l], "„%${1}s“"), args...)
}

// quotations are the verbs of what stands in quotation marks.
var quotations = regexp.MustCompile(`%(\[\d+\])?q`)

func worded(arg any, l Language) any {
	switch one := arg.(type) {
	case Worded:
		return one.In(l)
	case error:
		return OfError(one).In(l)
	case string:
		return figure(one, l)
	case fmt.Stringer:
		return figure(one.String(), l)
	}
	return arg
}

// figures are texts that are a number and no more, perhaps with its unit.
var figures = regexp.MustCompile(`^-?\d+\.\d+( ?(mm|cm|m|m2|%))?$`)

// figure writes a text that is a number with the decimal sign of the language.
func figure(text string, l Language) string {
	if l == English || !figures.MatchString(text) {
		return text
	}
	return strings.Replace(text, ".", l.decimalSign(), 1)
}

// decimalSign as the library writes it.
func (l Language) decimalSign() string {
	return strings.Trim(l.printer().Sprintf("%.1f", 0.5), "05")
}

// Join says one after the other, with something between.
func Join(between string, all ...Sentence) Sentence {
	args := make([]any, len(all))
	for i, one := range all {
		args[i] = one
	}
	format := strings.Join(slicesOf("%s", len(all)), strings.ReplaceAll(between, "%", "%%"))
	return Say(format, format, args...)
}

func slicesOf(text string, n int) []string {
	out := make([]string, n)
	for i := range out {
		out[i] = text
	}
	return out
}

// List says names as in "front, back and sleeve".
func List(all ...Sentence) Sentence {
	if len(all) < 2 {
		return Join("", all...)
	}
	last := len(all) - 1
	return Say("%s and %s", "%s und %s", Join(", ", all[:last]...), all[last])
}

// Texts of sentences in a language.
func Texts(all []Sentence, l Language) []string {
	out := make([]string, len(all))
	for i, one := range all {
		out[i] = one.In(l)
	}
	return out
}

// Names are texts that are the same in every language.
func Names(all []string) []Sentence {
	out := make([]Sentence, len(all))
	for i, one := range all {
		out[i] = Name(one)
	}
	return out
}

// Refusal is an error that can be said in every language.
type Refusal struct{ Sentence }

// Error is the sentence in English.
func (r Refusal) Error() string { return r.String() }

// Refuse makes an error by the rules of Say; errors.Is tells it from all others.
func Refuse(english, german string, args ...any) error {
	return &Refusal{Say(english, german, args...)}
}

// OfError is what is said of an error: in every language where it knows them, else as it
// is. Nothing is said of none.
func OfError(err error) Sentence {
	if err == nil {
		return Sentence{}
	}
	if known, is := err.(said); is { // what wraps it says more
		return known.Said()
	}
	return Name(err.Error())
}

// said is an error that knows its sentence.
type said interface{ Said() Sentence }

// IsSaid says that an error is known in every language.
func IsSaid(err error) bool {
	_, is := err.(said)
	return is
}

// Said is the sentence.
func (r Refusal) Said() Sentence { return r.Sentence }
