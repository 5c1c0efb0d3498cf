package strict

import (
	"bytes"
	"encoding/binary"
	"fmt"
	"unicode/utf16"
	"unicode/utf8"

	"ellwand/pieces/language"
)

// decoded is the text of a file as UTF-8: without a byte-order mark, and from
// UTF-16 where its mark says so, as some editors save it. Bytes that are no
// text are a fault at their place.
func decoded(data []byte) ([]byte, *Fault) {
	switch {
	case bytes.HasPrefix(data, []byte("\xef\xbb\xbf")):
		data = data[3:]
	case bytes.HasPrefix(data, []byte("\xff\xfe")):
		return fromUTF16(data[2:], binary.LittleEndian)
	case bytes.HasPrefix(data, []byte("\xfe\xff")):
		return fromUTF16(data[2:], binary.BigEndian)
	case len(data) > 1 && (data[0] == 0) != (data[1] == 0):
		return nil, &Fault{Line: 1, Kind: Malformed,
			Said: language.Say("the file is UTF-16 without a mark that says so; save it as UTF-8",
				"die Datei ist UTF-16 ohne ein Zeichen dafür; speichern Sie sie als UTF-8")}
	}
	return data, readable(data)
}

func fromUTF16(data []byte, order binary.ByteOrder) ([]byte, *Fault) {
	if len(data)%2 != 0 {
		return nil, &Fault{Line: 1, Kind: Malformed,
			Said: language.Say("the file is marked as UTF-16, but ends within a character; save it as UTF-8",
				"die Datei ist als UTF-16 bezeichnet, endet aber mitten in einem Zeichen; speichern Sie sie als UTF-8")}
	}
	units := make([]uint16, len(data)/2)
	for i := range units {
		units[i] = order.Uint16(data[2*i:])
	}
	text := []byte(string(utf16.Decode(units)))
	if at := bytes.IndexRune(text, utf8.RuneError); at >= 0 {
		return nil, unreadableAt(text, at, language.Say("half of a character", "ein halbes Zeichen"))
	}
	return text, readable(text)
}

// readable finds the first byte that is no text.
func readable(data []byte) *Fault {
	for at := 0; at < len(data); {
		r, size := utf8.DecodeRune(data[at:])
		switch {
		case r == 0:
			return unreadableAt(data, at, language.Say("a NUL", "ein NUL"))
		case r == utf8.RuneError && size == 1:
			return unreadableAt(data, at, language.Say("the byte %s, which is not UTF-8",
				"das Byte %s, das kein UTF-8 ist",
				fmt.Sprintf("%02X", data[at])))
		}
		at += size
	}
	return nil
}

func unreadableAt(data []byte, at int, what language.Sentence) *Fault {
	before := data[:at]
	line := 1 + bytes.Count(before, []byte("\n"))
	column := 1 + utf8.RuneCount(before[1+bytes.LastIndexByte(before, '\n'):])
	return &Fault{Line: line, Kind: Malformed,
		Said: language.Say("character %d of the line is %s; write it anew, and save the file as UTF-8",
			"Zeichen %d der Zeile ist %s; schreiben Sie es neu, und speichern Sie die Datei als UTF-8", column, what)}
}
