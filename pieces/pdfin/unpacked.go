package pdfin

import (
	"bytes"
	"compress/zlib"

	"ellwand/pieces/found"
	"ellwand/pieces/linework"
)

// unpacked refuses a file whose streams unpack to more than is read, before anything
// keeps them: a small file can hold very much of nothing. What each is packed by is
// not looked at, what it begins with tells; pictures count, too.
func unpacked(data []byte, budget *linework.Budget) error {
	buffer := make([]byte, 1<<16)
	for rest := data; ; {
		at := bytes.Index(rest, []byte("stream"))
		if at < 0 {
			return nil
		}
		begin := at + len("stream")
		ends := at >= 3 && bytes.Equal(rest[at-3:at], []byte("end"))
		rest = rest[begin:]
		if ends {
			continue
		}
		if err := inflated(bytes.TrimLeft(rest[:min(len(rest), 4)], "\r\n"), rest, buffer, budget); err != nil {
			return err
		}
	}
}

// inflated counts what comes out of a stream.
func inflated(head, rest, buffer []byte, budget *linework.Budget) error {
	if len(head) == 0 || head[0]&0x0f != 8 { // no zlib
		return nil
	}
	in, err := zlib.NewReader(bytes.NewReader(bytes.TrimLeft(rest, "\r\n")))
	if err != nil {
		return nil
	}
	defer in.Close()
	for {
		n, err := in.Read(buffer)
		if over := budget.Spend(found.Bytes, n); over != nil {
			return over
		}
		if err != nil || n == 0 {
			return nil // its end, or its damage
		}
	}
}
