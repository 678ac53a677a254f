package io.ovenmark.pantry;

import io.ovenmark.json.Position;
import java.io.IOException;
import java.io.Reader;
import java.util.Arrays;

/**
 * Reads records of delimited text one at a time from a stream of any length, without making texts
 * of fields that nobody asks for. A field may stand in quotes, in which a doubled quote is one
 * quote; whether a quoted field may hold line breaks is the format's matter (RFC 4180: yes; the
 * ASCII files of SR28: no).
 */
final class DelimitedReader {
  /** Longest record; more means a quote that was never closed or another kind of file. */
  private static final int LONGEST = 1 << 20;

  private final Reader in;
  private final char separator;
  private final char quote;
  private final boolean linesInQuotes;
  private final char[] buffer = new char[1 << 15];
  private int at;
  private int end;

  private char[] record = new char[1024];
  private int length;
  private int[] starts = new int[32];
  private int[] columns = new int[32];
  private int fields;
  private int line = 1;
  private int column = 1;
  private int recordLine;
  private String fault = "";

  DelimitedReader(Reader in, char separator, char quote, boolean linesInQuotes) {
    this.in = in;
    this.separator = separator;
    this.quote = quote;
    this.linesInQuotes = linesInQuotes;
  }

  /** Goes to the next record that is not an empty line; false at the end. */
  boolean next() throws IOException {
    do {
      if (peek() < 0) {
        return false;
      }
      record();
    } while (fields == 1 && length == 0 && fault.isEmpty());
    return true;
  }

  /** What is wrong with the form of the record; empty when nothing is. */
  String fault() {
    return fault;
  }

  int fields() {
    return fields;
  }

  /** A field's text. */
  String text(int field) {
    return new String(record, starts[field], stop(field) - starts[field]);
  }

  boolean isEmpty(int field) {
    return stop(field) == starts[field];
  }

  /** Where a field begins; a field beyond the last is placed at the record. */
  Position position(int field) {
    return new Position(recordLine, field < fields ? columns[field] : 1);
  }

  private int stop(int field) {
    return field + 1 < fields ? starts[field + 1] : length;
  }

  private void record() throws IOException {
    length = 0;
    fields = 0;
    fault = "";
    recordLine = line;
    startField();
    boolean quoted = false;
    boolean fieldBegins = true;
    for (int c = peek(); ; c = peek()) {
      if (c < 0) {
        if (quoted) {
          fault = "A quote is not closed before the end of the file.";
        }
        return;
      }
      if (length >= LONGEST) {
        fault = "The record is longer than a million characters; a quote may not be closed.";
        return;
      }
      take();
      if (quoted) {
        if (c == quote) {
          if (peek() == quote) {
            take();
            append(quote);
          } else {
            quoted = false;
          }
        } else if ((c == '\n' || c == '\r') && !linesInQuotes) {
          fault = "A text is not closed before the end of the line.";
          endLine(c);
          return;
        } else {
          if (c == '\n') {
            line++;
            column = 1;
          }
          append((char) c);
        }
      } else if (c == quote && fieldBegins) {
        quoted = true;
      } else if (c == separator) {
        startField();
        fieldBegins = true;
        continue;
      } else if (c == '\n' || c == '\r') {
        endLine(c);
        return;
      } else {
        append((char) c);
      }
      fieldBegins = false;
    }
  }

  private void endLine(int c) throws IOException {
    if (c == '\r' && peek() == '\n') {
      take();
    }
    line++;
    column = 1;
  }

  private void startField() {
    if (fields == starts.length) {
      starts = Arrays.copyOf(starts, fields * 2);
      columns = Arrays.copyOf(columns, fields * 2);
    }
    starts[fields] = length;
    columns[fields] = column;
    fields++;
  }

  private void append(char c) {
    if (length == record.length) {
      record = Arrays.copyOf(record, length * 2);
    }
    record[length++] = c;
  }

  private int peek() throws IOException {
    if (at == end) {
      end = in.read(buffer, 0, buffer.length);
      at = 0;
      if (end <= 0) {
        end = 0;
        return -1;
      }
    }
    return buffer[at];
  }

  private void take() {
    at++;
    column++;
  }
}
